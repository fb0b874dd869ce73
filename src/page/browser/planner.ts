import { caption, loadWords, stepAlt, type Words } from '../../booklet/index.ts';
import { checkModel } from '../../check/index.ts';
import { planTubes } from '../../cut/index.ts';
import { cachedDrawer, stepPictures, type StepGivens } from '../../draw/index.ts';
import { buildModel, loadSolids } from '../../model/index.ts';
import { planItem } from '../../plan/index.ts';
import { declaredFor } from '../../read/index.ts';
import { momentScene, type SceneBody } from '../../scene/index.ts';
import { whysOf } from './workers/whys.ts';
import type { PlannedStep, PlannerAnswer, PlannerOrder } from './workers/messages.ts';
import { breath } from './workers/newest.ts';
import { newPacker, type Pack } from './workers/packer.ts';
import { itemOf, orFaulty } from './workers/subject.ts';

type PlanOrder = Extract<PlannerOrder, { order: 'plan' }>;

/** A plan that is worked out, and what its steps are drawn from. */
interface Bench extends StepGivens {
  readonly run: number;
  readonly wordsIn: (lang: string) => Words;
  /** Bodies at both ends of a step's motion: all of it is to be seen. */
  readonly ends: Map<number, readonly SceneBody[]>;
  readonly pack: Pack;
}

/** Worker: one plan, then its steps as moments of their motions and as pictures. The newest of each kind of order counts. */
function start(): void {
  const waiting = new Map<PlannerOrder['order'], PlannerOrder>();
  let bench: Bench | null = null;
  let isBusy = false;

  const take = async (order: PlannerOrder): Promise<void> => {
    if (order.order === 'plan') {
      const result = await orFaulty(order.subject.run, () => planned(order));
      bench = 'bench' in result ? result.bench : null;
      postMessage('bench' in result ? stepsIn(result.bench, order.lang) : result);
      return;
    }
    if (bench === null) return;
    switch (order.order) {
      case 'words': postMessage(stepsIn(bench, order.lang)); return;
      case 'moment': moment(bench, order.number, order.done); return;
      case 'picture': picture(bench, order.number);
    }
  };

  // Motions before pictures: what moves must not wait.
  const workOff = async (): Promise<void> => {
    isBusy = true;
    for (let order = nextOf(waiting); order !== undefined; order = nextOf(waiting)) {
      waiting.delete(order.order);
      await take(order);
      await breath();
    }
    isBusy = false;
  };
  addEventListener('message', ({ data }: MessageEvent<PlannerOrder>) => {
    waiting.set(data.order, data);
    if (!isBusy) void workOff();
  });
}

const nextOf = (waiting: ReadonlyMap<PlannerOrder['order'], PlannerOrder>): PlannerOrder | undefined =>
  (['plan', 'words', 'moment', 'picture'] as const).map((kind) => waiting.get(kind)).find((order) => order !== undefined);

async function planned({ subject, locales }: PlanOrder): Promise<{ readonly bench: Bench }> {
  const item = itemOf(subject);
  const model = buildModel(item, subject.size);
  const solids = await loadSolids();
  const plan = planItem(model, item.order, solids, checkModel(model, declaredFor(item, subject.size)).advice.wall);
  return { bench: { run: subject.run, model, plan, cuts: await planTubes(model), solids, draw: cachedDrawer(), wordsIn: (lang) => loadWords(locales, lang), ends: new Map(), pack: newPacker(`work-${subject.run}`) } };
}

function stepsIn({ run, model, plan, wordsIn }: Bench, lang: string): PlannerAnswer {
  const words = wordsIn(lang);
  const steps = plan.steps.map((step): PlannedStep => ({ step, caption: caption({ words }, step), alt: stepAlt({ words, model }, step), why: whysOf(plan, model, step) }));
  return { answer: 'planned', run, steps };
}

function moment(bench: Bench, number: number, done: number): void {
  const { run, model, plan, solids, pack } = bench;
  const step = plan.steps.find((each) => each.number === number);
  const scene = step === undefined ? null : momentScene(model, step, solids, done);
  if (step === undefined || scene === null) return;
  const ends = bench.ends.get(number) ?? [0, 1].flatMap((end) => momentScene(model, step, solids, end)?.bodies ?? []);
  bench.ends.set(number, ends);
  const { packet, transfer } = pack(scene.bodies, ends);
  const answer: PlannerAnswer = { answer: 'moment', run, number, done, packet, marks: step.motions.some(({ kind }) => kind === 'fold') ? scene.marks : [] };
  postMessage(answer, { transfer });
}

function picture(bench: Bench, number: number): void {
  const step = bench.plan.steps.find((each) => each.number === number);
  if (step === undefined) return;
  const drawings = stepPictures(bench, step).map(({ svg, width, height }) => ({ svg, width, height }));
  const answer: PlannerAnswer = { answer: 'picture', run: bench.run, number, drawings };
  postMessage(answer);
}

start();
