import type { Kit, PanelKind } from '../../read/index.ts';
import type { Bend, Lug, Pattern, PatternFlap, PatternHole, Side, Strip, Vec2 } from '../types.ts';
import { creaseSpacing } from '../profiles/round.ts';
import { halfCutPlace, widestGap, wrapAround } from '../wrap.ts';
import { boxOf, outlineOf, type SideProfile } from './outline.ts';
import { baseHole, tabHole } from './punched.ts';
import { atSide, runsAlongX } from './sides.ts';
import { foldedPinLine } from './wrapped.ts';
import { pinPlaces, snipOf, wrapBends, wrapOrder } from './wrap-flap.ts';

/** A wall of a tray, under the bars of one side. Lengths mm. */
export interface TraySide {
  readonly side: Side;
  /** From the middle to the bars' axis. */
  readonly out: number;
  /** The rim round each bar it is folded over: along the side between the notches at the joints. */
  readonly rims: readonly { readonly flap: string; readonly from: number; readonly to: number; readonly reach: number }[];
  readonly tube: number;
  readonly wall: string;
}

/** What stands at the corners of a tray, mm. */
export interface TrayCorner {
  /** Outside diameter of the joints' sockets. */
  readonly socket: number;
  /** How far in the wing nuts of the posts reach, from the bars' axes. */
  readonly nut: number;
}

/** Room for a wing nut to be turned beside the end of a wall, mm. */
const NUT_ROOM = 2;
/** Radius of the inner face where a wall turns up, mm. Common practice, no source. */
const TURN_UP = 2;
/** Between the tray's walls and the sockets of the joints, and at the ends of the walls, mm. */
const HAIR = 0.05;
const END_GAP = 0.5;
/** A lug's length past its bends, its feet over the floor, and its pins from its free edge and from its ends, mm. */
const LUG = { length: 40, foot: 8, pinEdge: 20, pinEnd: 15 } as const;
/** How far before the first bend the solid of a wall begins, and where its middle part ends, mm. */
const WALL_START = 14;
const BASE_END = 1;

/** Where a wall stands: its inner face, and how its bends lie from the root line. */
interface WallPlace {
  /** From the middle to the wall's inner face. */
  readonly inner: number;
  /** The root line, where the flat part of the floor ends. */
  readonly root: number;
}

/** The wall round the corner: its inner face from the middle, and where a wall that carries no lug ends before it. */
interface NextWall {
  readonly inner: number;
  readonly end: number;
}

/** The two creases that turn a wall up, or a lug round the corner: from the tangent point on. */
interface TurnUp {
  readonly bends: readonly Bend[];
  /** From the tangent point on the floor to that on the wall, on the flat panel. */
  readonly length: number;
}

function turnUpOf(panel: PanelKind): TurnUp {
  const count = Math.ceil(Math.PI / 2 / panel.tightestCrease - 1e-9);
  const turn = Math.PI / 2 / count;
  const spacing = creaseSpacing(TURN_UP, panel.thickness, panel.neutralLayer, turn);
  return { length: count * spacing, bends: Array.from({ length: count }, (_, place): Bend => ({ at: spacing * (place + 0.5), turn, is: 'crease' })) };
}

/** The least depth, from the bars' axis to the floor, at which rims can be folded and pinned. */
export function leastDepth(kit: Kit, panel: PanelKind, tube: number): number {
  const wrap = wrapAround(panel, kit.practice, tube);
  return wrap.path.hingeInside + wrap.tab + panel.thickness;
}

/** Walls of the sides front and back carry lugs, which are pinned to the inner faces of the two others. */
const hasLugs = (side: Side): boolean => runsAlongX(side);

/**
 * The pattern of a tray that hangs `depth` under the axis of its bars: four walls turned up, rims folded outwards over the bars
 * and pinned to the walls' outer faces, lugs round the corners. Where a post's nut is turned, the walls that close it end.
 */
export function trayPattern(kit: Kit, panel: PanelKind, sides: readonly TraySide[], depth: number, corner: TrayCorner): Pattern {
  const turnUp = turnUpOf(panel);
  const place = (side: TraySide): WallPlace => {
    const inner = side.out - side.tube / 2 - kit.practice.wrapClearance - panel.thickness;
    return { inner, root: inner - TURN_UP };
  };
  const innerOf = (alongX: boolean): number => Math.min(...sides.filter(({ side }) => runsAlongX(side) !== alongX).map((side) => place(side).inner));
  const outOf = (alongX: boolean): number => Math.min(...sides.filter(({ side }) => runsAlongX(side) !== alongX).map(({ out }) => out));
  const walls = sides.map((side) => {
    const alongX = runsAlongX(side.side);
    return wallOf(kit, panel, side, place(side), { inner: innerOf(alongX), end: Math.min(innerOf(alongX) - END_GAP, outOf(alongX) - corner.nut - NUT_ROOM) }, depth, corner.socket, turnUp);
  });
  const profiles = walls.map((flap): SideProfile => stretchOf(flap, { flap }));
  const bases = walls.map((flap): SideProfile => stretchOf(flap, { out: flap.root - BASE_END }));
  const outline = outlineOf(profiles, 0);
  return {
    form: 'tray', panel: panel.name, thickness: panel.thickness, skin: panel.skin, neutralLayer: panel.neutralLayer,
    ...boxOf(outline), outline, base: outlineOf(bases, 0), flaps: walls,
    holes: walls.flatMap((wall) => [...rimHoles(kit, panel, sides, wall, depth, turnUp), ...lugHoles(kit, panel, wall, walls, turnUp)]),
  };
}

function stretchOf(flap: PatternFlap, edge: SideProfile['stretches'][number]['edge']): SideProfile {
  const [first] = flap.strips;
  return { side: flap.side, notches: [], stretches: [{ from: first?.start ?? 0, to: first?.end ?? 0, edge }] };
}

/** Height over the floor's inner face, as a distance from the root line. */
const atHeight = (turnUp: TurnUp, height: number): number => turnUp.length + height - TURN_UP;

function wallOf(kit: Kit, panel: PanelKind, side: TraySide, { root }: WallPlace, { inner: otherInner, end }: NextWall, depth: number, socket: number, turnUp: TurnUp): PatternFlap {
  const wrap = wrapAround(panel, kit.practice, side.tube);
  const [rim] = side.rims;
  const cornerTop = atHeight(turnUp, depth - socket / 2 - kit.practice.notchGap);
  const tangent = atHeight(turnUp, depth);
  const half = hasLugs(side.side) ? otherInner - HAIR - panel.thickness - TURN_UP + (turnUp.bends[0]?.at ?? 0) : end;
  const wall: Strip = { from: 0, to: cornerTop, start: -half, end: half };
  const bends = [...turnUp.bends, ...(rim === undefined ? [] : wrapBends(wrap, tangent, -1))];
  const edge = rim === undefined ? cornerTop : tangent + halfCutPlace(wrap) + wrap.tab;
  return {
    name: side.wall, side: side.side, root, bends, edge,
    line: 0,
    wall: turnUp.bends.length,
    order: [...turnUp.bends.keys(), ...(rim === undefined ? [] : wrapOrder(turnUp.bends.length, wrap.creases))],
    strips: rim === undefined ? [wall] : [wall, { from: cornerTop, to: edge, start: rim.from, end: rim.to }],
    corner: rim === undefined ? 0 : snipOf(wrap, kit.practice, rim.reach),
    pins: rim === undefined ? [] : pinPlaces(rim.from, rim.to, kit.practice),
    pinLine: edge - kit.practice.pinEdge,
    lugs: hasLugs(side.side) ? ([-1, 1] as const).map((end) => lugOf(side.wall, end, panel, otherInner, cornerTop, turnUp)) : [],
    widestGap: rim === undefined ? 0 : widestGap(wrap, kit.practice.wrapClearance),
  };
}

/** A lug's inner face stands a panel's thickness inside the next wall. */
function lugOf(wall: string, end: -1 | 1, panel: PanelKind, otherInner: number, top: number, turnUp: TurnUp): Lug {
  const tangent = otherInner - HAIR - panel.thickness - TURN_UP;
  const edge = tangent + turnUp.length + LUG.length;
  const [from, to] = [atHeight(turnUp, LUG.foot), top - HAIR];
  return {
    name: `${wall}${end === -1 ? '-a' : '-b'}`, end, edge, from, to,
    bends: turnUp.bends.map((bend) => ({ ...bend, at: tangent + bend.at })),
    pins: [from + LUG.pinEnd, to - LUG.pinEnd],
    pinLine: edge - LUG.pinEdge,
  };
}

/** A rim's tab lies on the outer face of its wall, so that the wall is punched from there. */
function rimHoles(kit: Kit, panel: PanelKind, sides: readonly TraySide[], wall: PatternFlap, depth: number, turnUp: TurnUp): readonly PatternHole[] {
  const tube = sides.find(({ side }) => side === wall.side)?.tube ?? 0;
  const low = atHeight(turnUp, depth - foldedPinLine(wrapAround(panel, kit.practice, tube), kit.practice.pinEdge));
  const at = (along: number, out: number): Vec2 => atSide(wall.side, along, wall.root + out);
  return wall.pins.flatMap((along) => [{ ...tabHole(kit, at(along, wall.pinLine)), flap: wall.name }, { ...baseHole(kit, panel, at(along, low), 'other'), flap: wall.name }]);
}

/** A lug's holes, and those in the wall it is turned onto: as far from the corner as the lug has them. */
function lugHoles(kit: Kit, panel: PanelKind, wall: PatternFlap, walls: readonly PatternFlap[], turnUp: TurnUp): readonly PatternHole[] {
  return wall.lugs.flatMap((lug) => lug.pins.flatMap((out): readonly PatternHole[] => {
    const next = walls.find(({ side }) => side === (lug.end === -1 ? 'left' : 'right'));
    if (next === undefined) return [];
    const tangent = lug.edge - LUG.length - turnUp.length;
    const fromCorner = TURN_UP + lug.pinLine - tangent - turnUp.length;
    const along = (wall.side === 'front' ? -1 : 1) * (wall.root + TURN_UP - fromCorner);
    return [
      { ...tabHole(kit, atSide(wall.side, lug.end * lug.pinLine, wall.root + out)), flap: lug.name },
      { ...baseHole(kit, panel, atSide(next.side, along, next.root + out), 'drawn'), flap: next.name },
    ];
  }));
}

/** Where the solid of a wall begins, from its root line, mm. */
export const startOf = ({ wall }: PatternFlap): number => (wall > 0 ? -WALL_START : -25);

