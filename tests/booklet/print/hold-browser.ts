import { openPrinter } from '../../../src/booklet/print/index.ts';

// A process that holds a browser until it is told to end, or killed.
const printer = await openPrinter({ langs: ['en'] });
process.once('message', () => { void printer.close().then(() => { process.disconnect(); }); });
process.send?.('ready');
