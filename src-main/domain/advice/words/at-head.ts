/**
 * A club's name at the head of a sentence: its first letter is a capital, the rest stays as the user spelt it.
 * @param language whose rules make the capital
 */
export function atHead(name: string, language: string): string {
  const [first = ''] = name;
  const capital = first.toLocaleUpperCase(language);
  // ß has none of one letter.
  return [...capital].length > 1 ? name : capital + name.slice(first.length);
}
