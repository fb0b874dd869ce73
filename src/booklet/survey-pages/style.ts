const hair = 0.25;

/** What the sheets to count by add to the style of all pages. Boxes are high enough for a carpenter's pencil. */
export const surveyStyle = `
.survey .lines { display: grid; grid-template-columns: 1fr 1fr; gap: 4mm 8mm; padding: 6mm 0 8mm; }
.survey .lines div { display: flex; gap: 3mm; align-items: end; }
.survey .lines dd { flex: 1; height: 9mm; border-bottom: ${hair}mm solid; }
.fill { width: 100%; margin-top: 3mm; }
.fill th, .fill td { border: ${hair}mm solid; padding: 1mm 1.5mm; vertical-align: middle; }
.fill thead th { font-size: 9pt; --leading: 4.2mm; text-align: center; vertical-align: bottom; }
.fill thead th svg { margin: 0 auto 1mm; }
.fill thead th span { display: block; }
.fill thead .strokes { width: 44mm; }
.fill thead .called { width: 32mm; }
.fill tbody tr { height: 10.5mm; }
.fill .tick { text-align: center; width: 30mm; }
.fill .tick i, .grain i { display: inline-block; width: 5mm; height: 5mm; border: ${hair}mm solid; vertical-align: middle; }
.fill .total { width: 22mm; border-width: 0.5mm; }
.counted tbody tr { height: 34mm; }
.counted tbody th { width: 52mm; }
.counted tbody th .picture { margin: 0 auto 2mm; }
.counted tbody th span { display: block; text-align: center; }
.survey-part { font-size: 16pt; font-weight: 700; --leading: 8mm; margin-top: 7mm; }
.panel-block { display: flex; gap: 6mm; border-top: ${hair}mm solid; padding: 3mm 0; margin-top: 1.5mm; break-inside: avoid; }
.panel-block .figures { flex: 1; font-size: 9pt; --leading: 4.2mm; }
.panel-block .row { display: flex; gap: 4mm; align-items: end; margin-bottom: 2mm; }
.panel-block .box { flex: 1; text-align: center; }
.panel-block .box.wide { flex: 2; }
.panel-block .box svg { margin: 0 auto 1mm; }
.panel-block .entry { height: 9mm; border: ${hair}mm solid; }
.panel-block .box span { display: block; }
.grain { display: grid; grid-template-columns: auto auto auto auto; gap: 1mm 1.5mm; align-items: center; }
.grain span { grid-column: 1 / -1; text-align: center; }
.damage { margin-top: 2mm; }
.damage th, .damage td { padding: 0.6mm 1mm; }
.fill.damage { table-layout: fixed; }
.fill.damage tbody tr { height: 10.5mm; }
.damage .corners svg { margin: 0 auto; }
`;
