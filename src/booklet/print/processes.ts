/** Whether a process is there, whoever's it is. */
export function isAlive(id: number): boolean {
  if (!(id > 0)) return false;
  try {
    process.kill(id, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

/** Ends a process and those it started, at once: its group where the system has groups. */
export function endGroup(id: number): void {
  for (const which of process.platform === 'win32' ? [id] : [-id, id]) {
    try {
      process.kill(which, 'SIGKILL');
    } catch { /* it is gone already */ }
  }
}
