/** Whether this page was opened by going on, not by going back or loading again. Where nothing tells, by going on. */
export const openedAfresh = (): boolean => {
  const [entry] = performance.getEntriesByType('navigation');
  return !(entry instanceof PerformanceNavigationTiming) || entry.type === 'navigate';
};
