/**
 * Prints the page as wide as paper. Charts are drawn to the width that they measure, and nothing measures anew once
 * printing has begun: they would be cut off at the paper's edge.
 */
export async function printPage(): Promise<void> {
  const { classList } = document.documentElement;
  const restore = () => classList.remove('on-paper');
  classList.add('on-paper');
  // One frame to measure, one to draw.
  for (let i = 0; i < 2; i++) await new Promise((done) => requestAnimationFrame(done));
  let hasBegun = false;
  addEventListener('beforeprint', () => (hasBegun = true), { once: true });
  addEventListener('afterprint', restore, { once: true });
  window.print();
  // Where printing is not allowed, neither event comes, and the page would stay narrow.
  if (!hasBegun) restore();
}
