import { z } from 'zod';
import { NASTY_TEXTS } from './nasty.ts';
import type { Draw } from './draw.ts';

/** What a schema asks for, as JSON Schema says it. */
export type Shape = {
  type?: string;
  properties?: Record<string, Shape>;
  required?: string[];
  additionalProperties?: Shape | boolean;
  propertyNames?: Shape;
  items?: Shape;
  prefixItems?: Shape[];
  minItems?: number;
  maxItems?: number;
  enum?: unknown[];
  const?: unknown;
  anyOf?: Shape[];
  minimum?: number;
  maximum?: number;
  exclusiveMinimum?: number;
  exclusiveMaximum?: number;
  minLength?: number;
  maxLength?: number;
  format?: string;
  pattern?: string;
};

const shapes = new WeakMap<z.ZodType, Shape>();

export function shapeOf(schema: z.ZodType): Shape {
  const known =
    shapes.get(schema) ?? (z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' }) as Shape);
  shapes.set(schema, known);
  return known;
}

/** Good values by the name of their field, where a shape alone would hardly ever hit one. */
export type Pools = (field: string, draw: Draw) => unknown;

/** A value that the schema takes, or nearly: rules between fields are not known here. */
export function valueFor(draw: Draw, shape: Shape, pools: Pools, field = ''): unknown {
  const pooled = draw.chance(0.85) ? pools(field, draw) : undefined;
  if (pooled !== undefined) return pooled;
  if (shape.const !== undefined) return shape.const;
  if (shape.enum !== undefined) return draw.pick(shape.enum);
  if (shape.anyOf !== undefined) return valueFor(draw, draw.pick(shape.anyOf), pools, field);
  switch (shape.type) {
    case 'object':
      return objectFor(draw, shape, pools);
    case 'array': {
      if (shape.prefixItems !== undefined)
        return shape.prefixItems.map((item) => valueFor(draw, item, pools, field));
      const least = shape.minItems ?? 0;
      const length = least + draw.size(Math.min((shape.maxItems ?? 8) - least, 12));
      return Array.from({ length }, () => valueFor(draw, shape.items ?? {}, pools, field));
    }
    case 'number':
    case 'integer':
      return numberFor(draw, shape);
    case 'string':
      return textFor(draw, shape);
    case 'boolean':
      return draw.chance(0.5);
    default:
      return null;
  }
}

function objectFor(draw: Draw, shape: Shape, pools: Pools): Record<string, unknown> {
  const value: Record<string, unknown> = {};
  for (const [name, part] of Object.entries(shape.properties ?? {})) {
    if (shape.required?.includes(name) === true || draw.chance(0.4))
      value[name] = valueFor(draw, part, pools, name);
  }
  if (typeof shape.additionalProperties === 'object') {
    for (let n = draw.below(4); n > 0; n -= 1) {
      const name = String(valueFor(draw, shape.propertyNames ?? { type: 'string' }, pools, 'key'));
      Object.defineProperty(value, name, {
        value: valueFor(draw, shape.additionalProperties, pools, name),
        enumerable: true,
        configurable: true,
        writable: true,
      });
    }
  }
  return value;
}

function numberFor(draw: Draw, shape: Shape): number {
  const low = shape.minimum ?? shape.exclusiveMinimum ?? -1000;
  const high = shape.maximum ?? shape.exclusiveMaximum ?? 1000;
  if (draw.chance(0.1)) return draw.pick([low, high]);
  const top = Math.min(high, low + 10 ** draw.between(0, 6));
  const value = low + draw.next() * (top - low);
  if (shape.type === 'integer') return Math.min(high, Math.ceil(value));
  return draw.chance(0.5) ? Math.round(value) : Math.round(value * 100) / 100;
}

function textFor(draw: Draw, shape: Shape): string {
  if (shape.format === 'date') {
    const two = (value: number) => String(value).padStart(2, '0');
    return `${String(draw.between(1990, 2040))}-${two(draw.between(1, 12))}-${two(draw.between(1, 28))}`;
  }
  if (shape.format === 'uuid') return '6f1f7a2e-6d1c-4b7a-9c35-2f4a1d3b5c7e';
  if (draw.chance(0.15)) return draw.pick(NASTY_TEXTS).slice(0, shape.maxLength);
  const least = shape.minLength ?? 0;
  const length = least + draw.size(Math.min((shape.maxLength ?? 40) - least, 60));
  return Array.from({ length }, () => draw.pick([..."abcdefgh 0123456789-éß字'"])).join('');
}
