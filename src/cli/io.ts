/** Where a command writes. Node's own streams fit. */
export interface Stream {
  write(text: string): unknown;
  readonly isTTY?: boolean | undefined;
  readonly columns?: number | undefined;
}

/** Everything that a command may know of the world around it, so that tests can run it in-process. */
export interface Io {
  readonly stdout: Stream;
  readonly stderr: Stream;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** The folder that relative paths start from. */
  readonly cwd: string;
  /** Has something said when the user stops the program, before it ends; what it returns takes that back. */
  readonly whenStopped?: (say: () => void) => () => void;
}

/** Columns of a terminal; of a pipe, a width that reads well. */
export function widthOf({ columns }: Stream): number {
  return columns !== undefined && columns > 0 ? columns : 80;
}

/** Colour on a terminal that can show it, unless NO_COLOR says no; FORCE_COLOR says yes to a pipe too. */
export function coloured(stream: Stream, { NO_COLOR, FORCE_COLOR, TERM }: Io['env']): boolean {
  if (NO_COLOR !== undefined && NO_COLOR !== '') return false;
  if (FORCE_COLOR !== undefined && FORCE_COLOR !== '') return FORCE_COLOR !== '0';
  return stream.isTTY === true && TERM !== 'dumb';
}

/** Whether a terminal's locale says that it knows ASCII only. No locale at all says nothing. */
export function asciiOnly(stream: Stream, { LC_ALL, LC_CTYPE, LANG }: Io['env']): boolean {
  const locale = LC_ALL || LC_CTYPE || LANG || '';
  return stream.isTTY === true && locale !== '' && !/utf-?8/i.test(locale);
}
