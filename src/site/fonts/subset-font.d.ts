/** The package ships no types; this is the part of it that we use. */
declare module 'subset-font' {
  export default function subsetFont(
    original: Uint8Array,
    text: string,
    options: { readonly targetFormat: 'woff2'; readonly noLayoutClosure?: boolean },
  ): Promise<Uint8Array>;
}
