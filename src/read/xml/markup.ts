import { SaxesParser } from 'saxes';
import { Problem } from '../../problem.ts';
import { limits } from '../limits.ts';

/** What a format wants to hear of. Names come in lower case and without their prefix. */
export interface Listener {
  open(name: string, attributes: Readonly<Record<string, string>>): void;
  /** At the end of an element: its own text (trimmed; only what stands after its last child), and its parent. */
  close(name: string, text: string, parent: string): void;
  /** True once something was read that is worth keeping. */
  started(): boolean;
}

class Broken extends Error {}

/**
 * Reads markup up to its end or to the first fault once something was read; faults before that are passed
 * over, for nothing can be lost yet. Custom entities are never expanded.
 *
 * @returns the line of the fault that ended it; null when it was read to its end.
 * @throws Problem `format-limits` when it is nested too deep.
 */
export function readMarkup(text: string, listener: Listener): number | null {
  // Without `xmlns`, whose cost grows with the square of the depth: prefixes vary and are stripped here.
  const parser = new SaxesParser({ xmlns: false });
  const path: string[] = [];
  let content = '';
  let fault: number | null = null;
  const add = (piece: string) => {
    if (content.length < limits.xmlText) content += piece.slice(0, limits.xmlText);
  };
  parser.on('text', add);
  parser.on('cdata', add);
  parser.on('opentag', ({ name, attributes }) => {
    if (path.length === limits.xmlDepth) throw tooDeep();
    path.push(local(name));
    content = '';
    listener.open(path.at(-1)!, attributes);
  });
  parser.on('closetag', () => {
    const name = path.pop() ?? '';
    listener.close(name, content.trim(), path.at(-1) ?? '');
    content = '';
  });
  parser.on('error', () => {
    if (!listener.started()) return;
    fault = parser.line;
    throw new Broken();
  });
  try {
    // White space before the declaration is a fault to the parser, and common.
    parser.write(escapeLooseAmpersands(text.trimStart())).close();
  } catch (error) {
    if (!(error instanceof Broken)) throw error;
  }
  return fault;
}

/** A ride called "Up & down", written as it is: the parser would look for the end of an entity for ever. */
function escapeLooseAmpersands(text: string): string {
  return text.replace(/&(?![#\w]{1,16};)/g, '&amp;');
}

function local(name: string): string {
  return name.slice(name.indexOf(':') + 1).toLowerCase();
}

function tooDeep(): Problem {
  return new Problem({
    code: 'format-limits',
    what: `the elements of this file are nested more than ${limits.xmlDepth} deep`,
    hint: 'Export the ride again from the head unit or the training app',
  });
}
