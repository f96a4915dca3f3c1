/**
 * Text that came from a file, made safe to show. Control characters (a newline among them), line and
 * paragraph separators, direction overrides, lone surrogates and whatever XML forbids become U+FFFD, so
 * that nothing can move a cursor, start a line, reverse a sentence or break a document.
 */
const unshowable =
  /[\p{Cc}\p{Cs}\u00ad\u061c\u180e\u200b\u200e\u200f\u2028-\u202e\u2060-\u2069\ufeff\ufff9-\ufffb\ufffe\uffff\u{e0000}-\u{e007f}]/gu;

/** The characters alone: for media that escape for themselves. */
export function showable(text: string): string {
  return text.replace(unshowable, '\ufffd');
}

/**
 * For a terminal or a log. Continuous-integration logs take `::name::` and `##[name]` as commands, also
 * behind spaces: a space inside takes that power away and leaves them readable.
 */
export function clean(text: string): string {
  return showable(text)
    .replaceAll('##[', '## [')
    .replace(/:(?=:)/g, ': ');
}

/** At most `most` characters, counted as a reader counts them, the cut marked. */
export function shorten(text: string, most: number): string {
  // A UTF-16 bound first: an endless name must not be taken apart character by character.
  const characters = [...text.slice(0, most * 4)];
  return characters.length <= most && text.length <= most * 4
    ? text
    : `${characters.slice(0, most - 1).join('')}…`;
}
