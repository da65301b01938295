declare module 'subset-font' {
  /** The part of a font that these characters need, glyphs that they are changed to included. */
  export default function subsetFont(font: Buffer, text: string, options: { targetFormat: 'woff2' }): Promise<Buffer>;
}
