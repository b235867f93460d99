/**
 * Sentences of the paragraphs and list items of a Markdown page, without marks of emphasis: headings, tables and commands are none.
 * A sentence ends with a full stop before a capital letter or at the end of its paragraph.
 */
export function pageSentences(page: string): readonly string[] {
  return page
    .split(/\n\s*\n|\n(?=- )/)
    .filter(block => !/^(?:[#|]|```)/.test(block))
    .map(block => block.replace(/^- /, '').replace(/[*`]/g, '').replace(/\s+/g, ' ').trim())
    .flatMap(paragraph => paragraph.split(/(?<=\.) (?=\p{Lu})/u))
    .filter(sentence => sentence !== '');
}
