import * as v from 'valibot';

/**
 * An object with the given fields; unknown fields are let pass, and the value that comes out is the value that went in.
 *
 * The schema library's own loose object is wrong here in three ways, so its run is replaced: it takes a list for an object
 * (where every field is optional nothing would complain), it copies every object it looks at, and it visits every field
 * it knows instead of the few that are there, which for a sparse ask takes three times as long (`bench/journal.ts`).
 */
export function objectOf<Entries extends v.ObjectEntries>(entries: Entries) {
  const loose = v.looseObject(entries, 'FIELD_TYPE an object in braces');
  const required = Object.keys(entries).filter((key) => entries[key]!.type !== 'optional');
  const known = new Map(Object.entries(entries).map(([key, field]) => [key, present(field)]));
  type Run = (typeof loose)['~run'];
  const run: Run = (dataset, config) => {
    const checked: Checked = dataset;
    const input = dataset.value;
    if (typeof input !== 'object' || input === null || Array.isArray(input)) {
      v._addIssue(loose, 'type', dataset, config);
      return checked as ReturnType<Run>;
    }
    const fields = input as Record<string, unknown>;
    checked.typed = true;
    for (const key of required) {
      if (fields[key] === undefined) {
        const path: [v.ObjectPathItem] = [pathItem(fields, key)];
        v._addIssue(loose, 'key', dataset, config, { input: undefined, expected: `"${key}"`, path });
      }
    }
    for (const key in fields) {
      const schema = known.get(key);
      const value = fields[key];
      if (schema === undefined || value === undefined) continue;
      const field: Checked = schema['~run']({ value }, config);
      if (field.typed !== true) checked.typed = false;
      if (field.issues === undefined) continue;
      for (const issue of field.issues) {
        const path: Path = [pathItem(fields, key), ...(issue.path ?? [])];
        checked.issues = [...(checked.issues ?? []), { ...issue, path }];
      }
    }
    return checked as ReturnType<Run>;
  };
  return { ...loose, '~run': run };
}

/** A data set of the schema library while it is being looked at: its own types tell only the ends apart. */
interface Checked {
  value: unknown;
  typed?: boolean | undefined;
  issues?: v.BaseIssue<unknown>[] | undefined;
}

/** The schema of an optional field's value: whether it is there has been looked at already. */
function present(field: v.GenericSchema): v.GenericSchema {
  return field.type === 'optional' && 'wrapped' in field ? (field.wrapped as v.GenericSchema) : field;
}

type Path = [v.IssuePathItem, ...v.IssuePathItem[]];

function pathItem(input: Record<string, unknown>, key: string): v.ObjectPathItem {
  return { type: 'object', origin: 'value', input, key, value: input[key] };
}
