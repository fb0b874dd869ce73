import { end, foldwright } from './command.ts';

// A reader that stops early, such as `head`, is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit();
  void end(error).then((code) => { process.exit(code); });
});

process.exitCode = await foldwright(process.argv.slice(2));
