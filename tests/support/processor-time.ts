/** Milliseconds that this thread has worked so far: unlike a clock, it stands still while the machine does other work. */
export function processorTime(): number {
  const { user, system } = process.threadCpuUsage();
  return (user + system) / 1000;
}
