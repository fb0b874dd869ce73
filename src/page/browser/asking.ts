import type { MakeOrder, ProjectTexts, SaveAnswer, SaveOrder } from '../types.ts';

/** Asks the page's server. All throw where it does not answer. */
export async function askTexts(): Promise<ProjectTexts> {
  return await (await sound(await fetch('/texts'))).json() as ProjectTexts;
}

export async function askSave(order: SaveOrder): Promise<SaveAnswer> {
  const response = await post('/save', order);
  return await (response.status === 409 ? response : await sound(response)).json() as SaveAnswer;
}

/** False when another making is still going. */
export async function askMake(order: MakeOrder): Promise<boolean> {
  const response = await post('/make', order);
  if (response.status !== 409) await sound(response);
  return response.ok;
}

export const askStop = async (): Promise<void> => { await sound(await post('/stop', {})); };

const post = (path: string, body: unknown): Promise<Response> =>
  fetch(path, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body) });

async function sound(response: Response): Promise<Response> {
  if (!response.ok) throw new Error((await response.text()).trim());
  return response;
}
