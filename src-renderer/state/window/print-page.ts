/**
 * Prints the page as wide as paper. Charts are drawn to the width that they measure, and nothing measures anew once
 * printing has begun: they would be cut off at the paper's edge.
 */
export async function printPage(): Promise<void> {
  const { classList } = document.documentElement;
  classList.add('on-paper');
  // One frame to measure, one to draw.
  for (let i = 0; i < 2; i++) await new Promise((done) => requestAnimationFrame(done));
  addEventListener('afterprint', () => classList.remove('on-paper'), { once: true });
  window.print();
}
