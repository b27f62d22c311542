/** Words that the service's English hardly does without and German never has. */
const ENGLISH =
  /\b(?:a|an (?:id|amount|export|archetype)|the|is|are|and|or|of|not|no|must|this|that|it|be|with|cannot|can|has|have|there|than|above|below|to|for|from|give|choose|check|make|save|add|take|leave|clubs?|file)\b/i;

/** Whether any English is left in a German text, what it quotes or tells in brackets of the system's own words aside. */
export function englishLeft(text: string): string | null {
  const own = text.replace(/"[^"]*"|„[^“]*“|\([^()]*\)/g, '');
  return ENGLISH.exec(own)?.[0] ?? null;
}
