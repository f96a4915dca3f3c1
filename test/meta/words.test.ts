import { describe, expect, it } from 'vitest';
import { filesUnder, readText } from './tree.ts';

const files = filesUnder('.');
const documents = files.filter((file) => /\.md$/.test(file) && !file.startsWith('.'));
const modules = files.filter((file) => /^(src|test)\/.*\.ts$/.test(file));
const rules = files.filter((file) => /^rules\/.*\.json$/.test(file));

/** Everything that a commissaire or a rider may read: rules, sentences, pages, help, samples. */
const printed = [
  ...rules,
  ...modules.filter((file) => /^src\/(report|judge|cli|action|event|read|problem|schema)\b/.test(file)),
  ...files.filter((file) => /^samples\/.*\.(md|json)$/.test(file)),
];

/** Lines that match, with their place. */
function lines(from: readonly string[], pattern: RegExp): string[] {
  return from.flatMap((file) =>
    readText(file)
      .split('\n')
      .flatMap((line, i) => (pattern.test(line) ? [`${file}:${i + 1} ${line.trim().slice(0, 100)}`] : [])),
  );
}

describe('words', () => {
  it('never convict', () => {
    const verdicts =
      /\b(cheat\w*|dop(ed|ing|er)|fraud\w*|guilty|culprit|liar|dishonest\w*|convict\w*|over-?read\w*|under-?read\w*)\b/i;
    expect(lines(printed, verdicts)).toEqual([]);
  });

  it('are spelt one way: the British', () => {
    const american =
      /\b(normaliz|analyz|summariz|recogniz|organiz|neutraliz|initializ|penaliz|behavior|favor|honor|neighbor|labeled|modeled|gray\b|center\b|meters? of climb|kilometer)/i;
    // Names that are not ours to spell: CSS, SVG, web standards, other people's code.
    const foreign = /align-items|justify-content|text-align|place-|: ?center|'center'|"center"|Organization/;
    const found = lines([...documents, ...rules, ...modules], american).filter((line) => !foreign.test(line));
    expect(found.filter((line) => !line.startsWith('test/meta/words.test.ts'))).toEqual([]);
  });

  it('name no proprietary training-load metric', () => {
    const metrics = /\b(TSS|NP|IF|CTL|ATL|TSB|FTP|normali[sz]ed power|training stress|intensity factor)\b/;
    expect(
      lines([...documents, ...printed], metrics).filter((line) => !line.startsWith('test/meta/')),
    ).toEqual([]);
  });
});
