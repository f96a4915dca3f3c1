/**
 * What the overview of an event does when it is alive: sorts by a column, shows the rows that were asked for.
 * Without it the table stands as written, what is open first.
 */

interface Line {
  readonly row: HTMLTableRowElement;
  readonly text: string;
  /** By column. */
  readonly keys: readonly (string | number)[];
}

function start(): void {
  const table = document.querySelector<HTMLTableElement>('#submissions');
  const tools = document.querySelector<HTMLFormElement>('#tools');
  if (table === null || tools === null) return;
  const body = table.tBodies[0]!;
  const lines = [...body.rows].map(lineOf);
  const output = tools.querySelector('output')!;
  tools.hidden = false;

  const show = () => {
    const wanted = wishes(tools);
    let shown = 0;
    for (const line of lines) {
      const fits = matches(line, wanted);
      line.row.hidden = !fits;
      if (fits) shown++;
    }
    output.textContent = `${shown} of ${lines.length} shown`;
  };
  tools.addEventListener('input', show);
  tools.addEventListener('submit', (event) => event.preventDefault());
  tools.addEventListener('reset', () => requestAnimationFrame(show));

  const heads = [...table.tHead!.rows[0]!.cells];
  table.tHead!.addEventListener('click', (event) => {
    const cell = (event.target as Element).closest('th');
    if (cell === null || cell.querySelector('button') === null) return;
    const falling = cell.ariaSort === 'ascending';
    for (const one of heads) one.ariaSort = one === cell ? (falling ? 'descending' : 'ascending') : 'none';
    sort(lines, heads.indexOf(cell), falling);
    body.append(...lines.map(({ row }) => row));
  });
  show();
}

function lineOf(row: HTMLTableRowElement): Line {
  const keys = [...row.cells].map(({ dataset, textContent }) => {
    const { key } = dataset;
    if (key === undefined) return (textContent ?? '').toLowerCase();
    return key === '' || Number.isNaN(Number(key)) ? key : Number(key);
  });
  return { row, text: `${row.textContent} ${row.dataset.rules}`.toLowerCase(), keys };
}

/** Numbers before words; what is empty stands last, whichever way the column is sorted. */
function sort(lines: Line[], column: number, falling: boolean): void {
  const order = new Intl.Collator('en', { numeric: true });
  lines.sort((a, b) => {
    const [x, y] = [a.keys[column] ?? '', b.keys[column] ?? ''];
    if ((x === '') !== (y === '')) return x === '' ? 1 : -1;
    const both = typeof x === 'number' && typeof y === 'number';
    const difference = both ? x - y : order.compare(String(x), String(y));
    return falling ? -difference : difference;
  });
}

type Wishes = Readonly<Record<string, string>>;

function wishes(tools: HTMLFormElement): Wishes {
  const fields = [...tools.elements].filter(
    (one): one is HTMLInputElement | HTMLSelectElement => 'name' in one && 'value' in one && one.name !== '',
  );
  return Object.fromEntries(fields.map(({ name, value }) => [name, value]));
}

/** A row's own words for what is asked stand in its data, several parted by @. */
function matches({ row, text }: Line, { words = '', ...wanted }: Wishes): boolean {
  if (!text.includes(words.trim().toLowerCase())) return false;
  return Object.entries(wanted).every(
    ([name, value]) =>
      value === '' || row.dataset[name] === value || (row.dataset[name] ?? '').split('@').includes(value),
  );
}

start();
