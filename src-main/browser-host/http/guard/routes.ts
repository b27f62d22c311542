/** What the host answers besides the files of the window. */
export type RouteName = 'call' | 'events' | 'upload' | 'open' | 'painted' | 'page' | 'file';

export type Route = {
  name: RouteName;
  methods: readonly string[];
  /** The one content type that a body may have; null where a body is not read. */
  bodyType: string | null;
};

const FILE: Route = { name: 'file', methods: ['GET', 'HEAD'], bodyType: null };

/**
 * application/octet-stream for uploads: not one of the types that a foreign page may send without asking first.
 */
const ROUTES: ReadonlyMap<string, Route> = new Map([
  ['/call', { name: 'call', methods: ['POST'], bodyType: 'application/json' }],
  ['/upload', { name: 'upload', methods: ['POST'], bodyType: 'application/octet-stream' }],
  ['/painted', { name: 'painted', methods: ['POST'], bodyType: null }],
  ['/page', { name: 'page', methods: ['GET'], bodyType: null }],
  ['/events', { name: 'events', methods: ['GET'], bodyType: null }],
  ['/open', { name: 'open', methods: ['GET'], bodyType: null }],
]);

/** Anything that is not a route of ours is asked of the files, which answer 404 for what they do not hold. */
export function routeOf(path: string): Route {
  return ROUTES.get(path) ?? FILE;
}
