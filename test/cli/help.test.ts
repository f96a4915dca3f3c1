import { describe, expect, it } from 'vitest';
import { tool } from '../../src/tool.ts';
import { run } from './run.ts';

describe('help', () => {
  it('opens with the commands', async () => {
    const { status, out, err } = await run(['--help']);
    expect(status).toBe(0);
    expect(err).toBe('');
    expect(out).toMatchInlineSnapshot(`
      "Usage: wattassay [options] [command]

      Audits cycling power recordings: what agrees, what does not, and what would
      settle it.

      Options:
        --version                      print the version
        --help                         explain this command

      Commands:
        audit <primary>                audit one submission: a recording, and what
                                       there is beside it
        profile <folder>               compile a rider's earlier rides into a small
                                       file
        rules [command]                list the rules, show one, or check a folder of
                                       your own
        event <event>                  audit every submission of an event
        merge <event> <parts...>       put the parts of an event together
        verify <report> <files...>     make a report again from its files, and say
                                       whether it is the same
        decide <event> <rider> <rule>  keep on record what was asked, answered and
                                       decided
        case <event> <rider>           pack one rider's case into a folder for both
                                       sides
        new <folder>                   lay out a private results repository
        help [command]                 explain a command

      Start with:
        $ wattassay audit trainer.fit --second pedals.fit --out report.html

      "
    `);
  });

  it.each([['audit'], ['verify'], ['profile'], ['rules'], ['rules', 'show'], ['rules', 'check']])(
    'teaches by examples: %s %s',
    async (...names) => {
      const words = names.filter((name) => name !== undefined);
      const { status, out } = await run([...words, '--help']);
      expect(status).toBe(0);
      expect(out).toContain('Examples:\n  $ wattassay');
      expect(await run(['help', ...words.slice(0, 1)])).toMatchObject({ status: 0, err: '' });
    },
  );

  it('fits a terminal', async () => {
    const { out } = await run(['audit', '--help'], { columns: 72 });
    const prose = out.slice(0, out.indexOf('Examples:'));
    expect(Math.max(...prose.split('\n').map((line) => line.length))).toBeLessThanOrEqual(72);
  });

  it.each([
    [],
    ...['audit', 'profile', 'rules', 'event', 'merge', 'verify', 'decide', 'case', 'new'].map((one) => [one]),
  ])('runs over the edge of a terminal with nothing but commands to copy: %s', async (...words) => {
    const { out } = await run([...words.filter((word) => word !== undefined), '--help'], {
      columns: 80,
      env: { NO_COLOR: '1' },
    });
    const examples = /^ +(\$ |--|our-rules)/;
    const long = out.split('\n').filter((line) => line.length > 80 && !examples.test(line));
    expect(long).toEqual([]);
  });

  it('is coloured on a terminal alone, and never against NO_COLOR', async () => {
    const coloured = async (world: object) => (await run(['--help'], world)).out.includes('\u001b[');
    expect(await coloured({ columns: 80 })).toBe(true);
    expect(await coloured({})).toBe(false);
    expect(await coloured({ columns: 80, env: { NO_COLOR: '1' } })).toBe(false);
    expect(await coloured({ columns: 80, env: { TERM: 'dumb' } })).toBe(false);
    expect(await coloured({ env: { FORCE_COLOR: '1' } })).toBe(true);
    expect(await coloured({ env: { FORCE_COLOR: '1', NO_COLOR: '1' } })).toBe(false);
  });

  it('tells the version', async () => {
    expect(await run(['--version'])).toEqual({ status: 0, out: `${tool.version}\n`, err: '' });
  });

  it('is what a bare call prints, as an error', async () => {
    const { status, out, err } = await run([]);
    expect(status).toBe(2);
    expect(out).toBe('');
    expect(err).toContain('Usage: wattassay');
  });
});

describe('a slip of the keys', () => {
  it.each([
    [['audti'], "error: unknown command 'audti'\n(Did you mean audit?)"],
    [['audit', '--secnd', 'x'], "error: unknown option '--secnd'\n(Did you mean --second?)"],
    [['audit'], "error: missing required argument 'primary'"],
    [['audit', 'a', 'b'], "error: too many arguments for 'audit'"],
    [['audit', 'a', '--mass', 'heavy'], "argument 'heavy' is invalid. Give a number, like 68.5."],
    [['audit', 'a', '--format', 'pdf'], 'Allowed choices are text, json, html, markdown, csv.'],
    [['audit', 'a', '--fail-on', 'clear'], 'Allowed choices are note, query, refer, never.'],
    [
      ['audit', 'a', '--out', 'report.pdf'],
      'error: --out report.pdf: the ending of the file must say which form the report takes. End it with one of .txt, .json, .html, .htm, .md, .csv.',
    ],
    [['rules', 'shwo'], 'error: there is no command “rules shwo”. Did you mean: wattassay rules show.'],
    [['rules', 'mean-bias'], 'Did you mean: wattassay rules show mean-bias.'],
    [['rules', 'show', 'mean-bais'], 'error: there is no rule “mean-bais”. Did you mean “mean-bias”?'],
    [['rules', 'show', 'constructor'], 'error: there is no rule “constructor”. wattassay rules lists them.'],
  ])('%j', async (argv, said) => {
    const { status, out, err } = await run(argv);
    expect(status).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(said);
  });

  it('echoes nothing that a terminal or a log would obey', async () => {
    const { err } = await run(['audit', '\u001b[2J::error::x\n##[add-mask]e']);
    expect(err).not.toMatch(/\u001b|::error|##\[/);
    expect((await run(['\u001b[2Jx'])).err).not.toContain('\u001b');
  });
});
