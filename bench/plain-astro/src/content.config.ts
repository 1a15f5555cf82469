import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';

export const collections = {
  teardowns: defineCollection({
    loader: glob({ pattern: '*/index.md', base: process.env.BENCH_CONTENT }),
    schema: z.object({ title: z.string() }).passthrough(),
  }),
};
