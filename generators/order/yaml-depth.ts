import { Lexer } from 'yaml';

/**
 * Whether brackets, or the dashes and question marks of one line, are nested deeper than `most`.
 * Asked of the lexer, which does not recurse, before the parser, which does.
 */
export function nestsDeeperThan(most: number, text: string): boolean {
  let brackets = 0;
  let marks = 0;
  for (const lexeme of new Lexer().lex(text)) {
    if (lexeme === '[' || lexeme === '{') brackets++;
    else if (lexeme === ']' || lexeme === '}') brackets--;
    else if (lexeme === '-' || lexeme === '?') marks++;
    else if (lexeme.includes('\n')) marks = 0;
    if (brackets > most || marks > most) return true;
  }
  return false;
}
