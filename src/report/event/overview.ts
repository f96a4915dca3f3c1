import type { EventView } from '../../types.ts';

export async function renderOverview(view: EventView): Promise<string> {
  return view.record.event.name;
}
