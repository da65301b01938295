/** One command of the tool. */
export interface Command {
  /** 'pack ORDER.yaml --out DIR' */
  usage: string;
  /** What it is for, in a line. */
  about: string;
  /** All its flags. */
  help(): string;
  /** Does the work; throws a UserMistake for what the user can put right. */
  run(args: string[]): Promise<void>;
}
