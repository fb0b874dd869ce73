import type { Alive, GrowAnswer, GrowOrder, MakeOrder, ProjectTexts, SaveAnswer, SaveOrder } from '../types.ts';

/** Asks the page's server. All throw where it does not answer. */
export async function askTexts(): Promise<ProjectTexts> {
  return await (await sound(await fetch('/texts'))).json() as ProjectTexts;
}

export const askSave = async (order: SaveOrder): Promise<SaveAnswer> => await (await post('/save', order)).json() as SaveAnswer;

export const askGrow = async (order: GrowOrder): Promise<GrowAnswer> => await (await post('/grow', order)).json() as GrowAnswer;

/** Whether the program still runs, and what its files are by now. */
export const askAlive = async (): Promise<Alive> => await (await sound(await fetch('/alive'))).json() as Alive;

/** False when another making is still going; the news are then of that one. */
export const askMake = async (order: MakeOrder): Promise<boolean> => (await (await post('/make', order)).json() as { readonly begun: boolean }).begun;

export const askStop = async (): Promise<void> => { await post('/stop', {}); };

const post = async (path: string, body: unknown): Promise<Response> =>
  sound(await fetch(path, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body) }));

async function sound(response: Response): Promise<Response> {
  if (!response.ok) throw new Error((await response.text()).trim());
  return response;
}
