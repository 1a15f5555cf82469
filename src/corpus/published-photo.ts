/** One encoded file of a photo, as it stands in the site. */
export interface PhotoSource {
  readonly format: 'webp' | 'jpeg';
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** Rooted, without the base path: `/photos/<slug>/<name>-<digest>-<width>.webp`. */
  readonly address: string;
  readonly bytes: number;
}

/** A photo of an entry ready for its page: turned upright, without metadata, in the sizes that pages use. */
export interface PublishedPhoto {
  /** Name of the original beside the entry; the original itself is never published. */
  readonly file: string;
  /** Pixels of the original after it was turned upright. */
  readonly width: number;
  readonly height: number;
  /** WebP before JPEG, the narrowest first within each; never wider than the original. */
  readonly sources: readonly PhotoSource[];
  /** Hash of the original and of how it is encoded: changes whenever the files do. */
  readonly digest: string;
}
