declare module '@11ty/eleventy' {
  import type { Environment } from 'nunjucks';
  interface Config {
    ignores: Set<string>;
    setUseGitIgnore(use: boolean): void;
    setLibrary(format: string, library: Environment): void;
    addGlobalData(name: string, value: unknown): void;
  }
  export default class Eleventy {
    constructor(input: string, output: string, options: { quietMode: boolean; configPath: string; config(config: Config): void });
    disableLogger(): void;
    write(): Promise<unknown>;
  }
}
