import { describe, expect, it } from 'vitest';
import { cornerMark, holeMark } from '../../src/draw/flat/hole-marks.ts';
import { faceSign, markedFace, turnedOver } from '../../src/draw/flat/marked-face.ts';
import { pencil } from '../../src/draw/flat/pencil.ts';
import { ringedNumeral, type Mark } from '../../src/draw/kit/marks.ts';
import { earlier, pens, type Pen } from '../../src/draw/kit/pens.ts';
import { toPicture } from '../../src/draw/kit/svg.ts';
import { isPairName, pairPictures, type PairName } from '../../src/draw/pictograms/index.ts';
import { tell } from '../../src/scene/index.ts';
import { WORK, type Action } from '../../src/work/facts.ts';
import { itemNamed, modelOf } from '../support/items.ts';

const paper = { width: 20, height: 20 };

/** What each sign on a flat drawing means: one sign, one meaning. */
const signs: Readonly<Record<string, readonly Mark[]>> = {
  'a hole right through': holeMark({ depth: null, face: 'drawn' }, [10, 10], 1.4, pens.motion),
  'a blind hole from the face that is drawn': holeMark({ depth: 6, face: 'drawn' }, [10, 10], 1.4, pens.motion),
  'a blind hole from the other face': holeMark({ depth: 6, face: 'other' }, [10, 10], 1.4, pens.motion),
  'the round corner of a notch, no hole for a pin': [cornerMark([10, 10])],
  'the face that carries the marks, in a section': markedFace([10, 10]),
  'the same face as the far one, in a section': markedFace([10, 10], 'down'),
  'the face that carries the marks, seen': faceSign([10, 10], 'there'),
  'the same face seen from behind': faceSign([10, 10], 'behind'),
  'turn the panel over, off its marked face': turnedOver([0, 0], 'below'),
  'turn the panel over, back onto its other face': turnedOver([0, 0], 'up'),
  'here something is marked': pencil([10, 10]),
  'a place in an order': [ringedNumeral(tell.number(1), [10, 10], 4)],
};

/** What each line on a panel means. */
const lines: Readonly<Record<string, Pen>> = {
  'cut through': pens.cut, 'crease': pens.crease, 'cut half through': pens.halfCut, 'the inside line, only marked': pens.newInside, 'the middle of something': pens.centre,
};

describe('signs of flat drawings', () => {
  it('are drawn differently where they mean something else', () => {
    const drawn = Object.values(signs).map((marks) => toPicture(paper, marks).svg);
    expect(new Set(drawn).size).toBe(drawn.length);
  });

  it('are lines of another type or weight where they mean something else, new and as left by an earlier step', () => {
    const looks = Object.values(lines).map(({ type, width }) => `${type} ${width}`);
    expect(new Set(looks).size).toBe(looks.length);
    const left = Object.values(lines).map((pen) => earlier(pen).type);
    expect(new Set(left).size).toBe(left.length);
  });
});

const WHOLE = { on: 'whole' } as const;

/** The kinds of work that each right/wrong pair shows the outcome of; none where it belongs to no step. */
const shows: Readonly<Record<PairName, readonly Action[]>> = {
  'half-cut': ['half-cut'], 'frame-centred': ['lay-frame'], 'frame-square': ['close-frame', 'set-in'], 'tab-flat': ['wrap-side'], 'tab-pressed': ['punch-tab'], 'tube-home': ['push-tubes', 'fit-end'],
  'nut-tight': ['pin-posts', 'pin-panel'], 'hole-straight': ['drill'], 'deck-level': ['push-posts', 'slide-on'], 'cable-tight': ['brace'], crease: ['crease'],
  'rack-upright': ['stand-up'], 'feet-stand': ['stand-up'], 'handle-pushed': ['turn-item'], notch: ['cut-notches'], 'notch-sharp': ['cut-notches'], 'pin-home': ['pin-side', 'pin-corners'], 'cut-square': ['cut-tubes'],
  mark: ['cut-blank', 'mark-inside', 'mark-creases', 'mark-notches', 'punch-holes', 'cut-panel', 'mark-posts'],
  'panel-flush': ['lay-panel', 'hold-panel', 'fit-hinge', 'fit-bracket'], 'bed-child': [], 'walls-upright': ['turn-up'], 'end-smooth': ['cap-ends'], 'wall-holds': ['fix-to-wall'],
};

describe('the right/wrong pair of a step', () => {
  it('shows the outcome of its own kind of work', () => {
    // Of a tray's panel, the chest's, some work looks at other things.
    const tray = modelOf(itemNamed('chest'), 'standard');
    const handled = modelOf(itemNamed('trolley'), 'standard');
    const told = Object.entries(WORK).flatMap(([action, { check, checkOf }]) => [check, checkOf?.({ on: 'pattern', index: 0 }, tray) ?? null, action === 'turn-item' ? checkOf?.(WHOLE, handled) ?? null : null].flatMap((each) => (each?.kind === 'pair' && isPairName(each.name) ? [[each.name, action] as const] : [])));
    for (const name of Object.keys(pairPictures) as PairName[]) {
      expect([name, told.filter(([pair]) => pair === name).map(([, action]) => action).sort()]).toEqual([name, [...shows[name]].sort()]);
    }
  });
});
