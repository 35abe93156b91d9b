/** Ctrl-C: the first time it asks the planning to stop with what it has, the second time it quits. */
export function stopOnInterrupt(onAsked: () => void): { readonly stop: { readonly asked: boolean }; readonly release: () => void } {
  const stop = { asked: false };
  const onInterrupt = () => {
    if (stop.asked) process.exit(130);
    stop.asked = true;
    onAsked();
  };
  process.on("SIGINT", onInterrupt);
  return { stop, release: () => void process.off("SIGINT", onInterrupt) };
}
