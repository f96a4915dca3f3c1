import { parseJson } from '../json.ts';
import { Problem } from '../problem.ts';
import { fitting, type Schema } from '../schema.ts';
import { tool } from '../tool.ts';
import type { Report } from '../types.ts';
import { shorten } from './clean.ts';
import schema from './report.schema.json' with { type: 'json' };

/** What a report states of how it was made: all that it takes to make it again. */
export interface Recorded {
  readonly inputs: Report['inputs'];
  /** Facts in the shape of facts, and not yet checked as facts. */
  readonly settings: Report['settings'];
  readonly rules: Pick<Report['rules'], 'name' | 'sha256'>;
  readonly unreadable: Report['submission']['unreadable'];
  /** Whether past rides were looked at. */
  readonly hadHistory: boolean;
}

/** Files that one report may rest on. */
const mostInputs = 50_000;

const { inputs, settings, rules, submission } = schema.properties;
/** The part that is relied upon. The rest is compared, whatever it is, and need not fit anything. */
const part: Schema = {
  type: 'object',
  properties: {
    inputs,
    settings,
    rules: {
      type: 'object',
      properties: { name: rules.properties.name, sha256: rules.properties.sha256 },
      required: ['name', 'sha256'],
    },
    submission: {
      type: 'object',
      properties: { unreadable: submission.properties.unreadable },
      required: ['unreadable', 'history'],
    },
  },
  required: ['inputs', 'settings', 'rules', 'submission'],
  $defs: schema.$defs,
};

/**
 * Reads a report from its JSON text, which may be anybody's.
 *
 * @param file as sentences call it
 * @returns the value as it stands, and the part of it that was checked
 * @throws Problem `report-wrong`: no report, another version's, or one that does not state how it was made
 */
export async function readReport(
  text: string,
  file: string,
): Promise<{ whole: unknown; recorded: Recorded }> {
  if (/^\uFEFF?\s*</.test(text)) {
    throw wrong(file, 'this is a page, and only the JSON form of a report can be verified', jsonHint);
  }
  const whole = parseJson(text, 'report-wrong', file);
  refuseOthers(whole, file);
  const stated = whole as { readonly inputs?: unknown };
  if (Array.isArray(stated.inputs) && stated.inputs.length > mostInputs) {
    throw wrong(file, `it names more than ${mostInputs} files`);
  }
  const fits = await fitting<Pick<Report, 'inputs' | 'settings' | 'rules' | 'submission'>>(
    part,
    whole,
    'report-wrong',
    file,
  );
  return {
    whole,
    recorded: {
      inputs: fits.inputs,
      settings: fits.settings,
      rules: fits.rules,
      unreadable: fits.submission.unreadable,
      hadHistory: fits.submission.history !== null,
    },
  };
}

const jsonHint = 'Name the file that was written with --out report.json, or the report.json of an event';

/** Another version may judge otherwise, and rightly so: only the version that made a report can make it again. */
function refuseOthers(whole: unknown, file: string): void {
  const { schemaVersion, tool: made } = (whole ?? {}) as { schemaVersion?: unknown; tool?: unknown };
  const { name, version } = (made ?? {}) as { name?: unknown; version?: unknown };
  if (schemaVersion === undefined || name !== tool.name || typeof version !== 'string') {
    throw wrong(file, 'this is no report on one submission', jsonHint);
  }
  if (version === tool.version) return;
  const needed = `${tool.name} ${shorten(version, 30)}`;
  throw wrong(
    file,
    `it was made by ${needed}, and this is ${tool.name} ${tool.version}`,
    `Only the version that made a report can make it again: verify it with ${needed}`,
  );
}

function wrong(where: string, what: string, hint?: string): Problem {
  return new Problem({ code: 'report-wrong', what, where, ...(hint === undefined ? {} : { hint }) });
}
