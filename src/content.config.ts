import { defineCollection } from "astro:content";
import { glob } from "astro/loaders";
import { moduleSchema } from "./schemas/module.ts";

export const collections = {
  modules: defineCollection({ loader: glob({ base: "./content/modules", pattern: "**/*.mdx" }), schema: moduleSchema }),
};
