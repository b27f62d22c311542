const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** For text and for quoted attributes of HTML and SVG. */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/g, (mark) => ENTITIES[mark] ?? mark);
}
