import type { ReactNode } from 'react';

interface SignProps {
  readonly width?: number;
  readonly height?: number;
  readonly label: string;
  readonly children: ReactNode;
}

/** A small drawing over its word, mm. Its geometry stays as it is in every language. */
function Sign({ width = 26, height = 11, label, children }: SignProps): ReactNode {
  return (
    <svg role="img" aria-label={label} direction="ltr" width={`${width}mm`} height={`${height}mm`} viewBox={`0 0 ${width} ${height}`} fill="none" stroke="#000" strokeWidth={0.4}>
      {children}
    </svg>
  );
}

/** Hatching of a damaged stretch. */
const hatch = (x: number, y: number, width: number, height: number): ReactNode => {
  const lines = Math.ceil((width + height) / 1.2);
  return (
    <g strokeWidth={0.25}>
      {Array.from({ length: lines }, (_, index) => {
        const at = index * 1.2;
        const [x1, y1] = at <= width ? [x + at, y] : [x + width, y + at - width];
        const [x2, y2] = at <= height ? [x, y + at] : [x + at - height, y + height];
        return <path key={index} d={`M${x1} ${y1}L${x2} ${y2}`} />;
      })}
    </g>
  );
};

/** A dimension line with a head at each end. */
const span = (x1: number, x2: number, y: number): ReactNode => (
  <g strokeWidth={0.25}>
    <path d={`M${x1} ${y}H${x2}M${x1} ${y - 1.2}V${y + 1.2}M${x2} ${y - 1.2}V${y + 1.2}`} />
    <path d={`M${x1} ${y}l2 -0.5v1zM${x2} ${y}l-2 -0.5v1z`} fill="#000" stroke="none" />
  </g>
);

export const TubeLength = ({ label }: { readonly label: string }): ReactNode => (
  <Sign label={label}><rect x={0.5} y={1} width={25} height={4} />{span(0.5, 25.5, 8)}</Sign>
);

export const DamagedEnd = ({ label }: { readonly label: string }): ReactNode => (
  <Sign label={label}><rect x={0.5} y={1} width={25} height={4} />{hatch(18.5, 1, 7, 4)}<path d="M18.5 0.4V5.6" />{span(18.5, 25.5, 8)}</Sign>
);

export const Cracked = ({ label }: { readonly label: string }): ReactNode => (
  <Sign label={label}><rect x={0.5} y={1} width={25} height={4} /><path d="M1 3l3 -1 2.5 1.5 3 -1.8 3 1.6 3 -1.5 2.6 1.4 3 -1.3 4 1" /><path d="M4 0L22 6.4M22 0L4 6.4" strokeWidth={0.6} /></Sign>
);

export const CableLength = ({ label }: { readonly label: string }): ReactNode => (
  <Sign label={label}><circle cx={2.5} cy={3} r={1.8} /><circle cx={23.5} cy={3} r={1.8} /><path d="M4.3 3H21.7" strokeWidth={0.7} />{span(2.5, 23.5, 8)}</Sign>
);

export const PanelSides = ({ label, side }: { readonly label: string; readonly side: 'length' | 'width' }): ReactNode => (
  <Sign label={label} width={20} height={15}>
    <rect x={5} y={1} width={14} height={9} />
    {side === 'length' ? span(5, 19, 13) : <g transform="translate(2 0) rotate(90)">{span(1, 10, 0)}</g>}
  </Sign>
);

export const Grain = ({ label, along }: { readonly label: string; readonly along: 'length' | 'width' }): ReactNode => (
  <Sign label={label} width={17} height={12}>
    <rect x={0.5} y={0.5} width={16} height={11} />
    {Array.from({ length: 4 }, (_, index) => <path key={index} strokeWidth={0.25} d={along === 'length' ? `M2 ${2.4 + index * 2.4}H15` : `M${3.2 + index * 3.5} 2V10`} />)}
  </Sign>
);

/** From which corner, and how far along and across, a rectangle not to be used begins, and how large it is. */
export const DamageSides = ({ label, shows }: { readonly label: string; readonly shows: 'corner' | 'along' | 'across' | 'length' | 'width' }): ReactNode => (
  <Sign label={label} width={18} height={15}>
    <rect x={1} y={0.5} width={16} height={13.5} />
    <rect x={8} y={4} width={6} height={4} />{hatch(8, 4, 6, 4)}
    <path d="M1 14v-3a3 3 0 0 1 3 3z" fill="#000" stroke="none" />
    {shows === 'along' && span(1, 8, 11)}
    {shows === 'length' && span(8, 14, 10.5)}
    {shows === 'across' && <g transform="translate(6.2 0) rotate(90)">{span(8, 14, 0)}</g>}
    {shows === 'width' && <g transform="translate(15.6 0) rotate(90)">{span(4, 8, 0)}</g>}
  </Sign>
);

/** The four corners of a panel, to tick the one that is meant. */
export const Corners = ({ label }: { readonly label: string }): ReactNode => (
  <Sign label={label} width={16} height={9.4}>
    <rect x={2.5} y={2} width={11} height={5.6} strokeWidth={0.25} />
    {([[1, 0.5], [12, 0.5], [1, 5.9], [12, 5.9]] as const).map(([x, y]) => <rect key={`${x} ${y}`} x={x} y={y} width={3} height={3} fill="#fff" />)}
  </Sign>
);

/** A panel on squared paper, length from left to right, mm of paper. */
export function SquaredPanel({ label, squares: [along, across], square }: { readonly label: string; readonly squares: readonly [number, number]; readonly square: number }): ReactNode {
  const [width, height] = [along * square, across * square];
  return (
    <Sign label={label} width={width + 1} height={height + 1}>
      <g strokeWidth={0.12} stroke="#777">
        {Array.from({ length: along - 1 }, (_, index) => <path key={`x${index}`} d={`M${0.5 + (index + 1) * square} 0.5v${height}`} strokeWidth={(index + 1) % 5 === 0 ? 0.3 : 0.12} />)}
        {Array.from({ length: across - 1 }, (_, index) => <path key={`y${index}`} d={`M0.5 ${0.5 + (index + 1) * square}h${width}`} strokeWidth={(index + 1) % 5 === 0 ? 0.3 : 0.12} />)}
      </g>
      <rect x={0.5} y={0.5} width={width} height={height} strokeWidth={0.5} />
    </Sign>
  );
}
