import { type Hole, html, type Markup } from '../markup.ts';
import { notPrinted } from '../words/paper.ts';
import type { Sentence } from '../words/sentence.ts';

/** A sentence with strangers' words set apart, so that they neither mix with ours nor turn our direction. */
export function said(sentence: Sentence): readonly Hole[] {
  return sentence.map((piece) =>
    typeof piece === 'string' ? piece : html`<q><bdi>${piece.foreign}</bdi></q>`,
  );
}

/** A section of the page: its heading in the margin, its content beside it. `kind` sets the line above. */
export function section(id: string, title: string, content: Hole, kind = ''): Markup {
  return html`<section class="row ${kind}" aria-labelledby="${id}"><h2 id="${id}">${title}</h2><div>${content}</div></section>`;
}

/** A part of a section under a heading of its own. */
export function part(title: string, content: Hole): Markup {
  return html`<div class="part"><h3>${title}</h3>${content}</div>`;
}

/** A list of terms with what is said of each; terms without a text are left out. */
export function terms(rows: readonly (readonly [term: string, text: Hole])[]): Markup {
  return html`<dl>${rows
    .filter(([, text]) => text !== null && text !== '')
    .map(([term, text]) => html`<div><dt>${term}</dt><dd>${text}</dd></div>`)}</dl>`;
}

export function bullets(items: readonly Hole[]): Markup {
  return html`<ul>${items.map((item) => html`<li>${item}</li>`)}</ul>`;
}

/** What is folded away until a reader asks for it. On paper only its title stands, unless it was unfolded before. */
export function folded(title: Hole, content: Hole): Markup {
  return html`<details><summary>${title}<span class="paper"> (${notPrinted})</span></summary>${content}</details>`;
}

/** A table that scrolls by itself where the page is narrow, also by keyboard. */
export function table(
  caption: string,
  head: readonly string[],
  rows: readonly (readonly Hole[])[],
  kind: 'words' | 'numbers' = 'words',
): Markup {
  return html`<div class="scroll" role="group" tabindex="0" aria-label="${caption}"><table class="${kind}"><caption>${caption}</caption><thead><tr>${head.map(
    (cell) => html`<th scope="col">${cell}</th>`,
  )}</tr></thead><tbody>${rows.map(
    ([first, ...others]) =>
      html`<tr><th scope="row">${first}</th>${others.map((cell) => html`<td>${cell}</td>`)}</tr>`,
  )}</tbody></table></div>`;
}
