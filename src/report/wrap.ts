import stringWidth from 'string-width';

/** Columns that a text takes; the usual case is counted without a table of wide characters. */
export function columns(text: string): number {
  return /^[\x20-\x7e]*$/.test(text) ? text.length : stringWidth(text);
}

/** Breaks at spaces, and inside a word only when it is longer than a line. No-break spaces hold. */
export function wrap(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  let used = 0;
  for (const word of text.split(' ').flatMap((one) => pieces(one, width))) {
    const size = columns(word);
    if (line !== '' && used + 1 + size > width) {
      lines.push(line);
      line = '';
    }
    used = line === '' ? size : used + 1 + size;
    line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line];
}

/** A word in parts that fit on a line, each of at least one character. */
function pieces(word: string, width: number): readonly string[] {
  if (columns(word) <= width) return [word];
  const parts: string[] = [];
  let part = '';
  let used = 0;
  for (const character of word) {
    const size = columns(character);
    if (part !== '' && used + size > width) {
      parts.push(part);
      part = '';
      used = 0;
    }
    part += character;
    used += size;
  }
  return [...parts, part];
}
