import * as z from '../zod.ts';
import type { Schema } from './shape.ts';

/** Keys that begin with `x-` are free everywhere, which a closed object must say. */
const freeKeys = { '^x-': {} };

/**
 * The JSON Schema (draft 2020-12) of one of the documents, for editors and for validators of others.
 *
 * @param schema  the document's single definition
 * @param format  its format string, which becomes the schema's id
 */
export function jsonSchemaOf(schema: Schema, format: string, title: string): object {
  const made = z.toJSONSchema(schema, {
    target: 'draft-2020-12',
    io: 'input',
    override: ({ jsonSchema }) => {
      if (jsonSchema.additionalProperties === false) jsonSchema.patternProperties = freeKeys;
    },
  });
  return { $id: format, title, ...made };
}
