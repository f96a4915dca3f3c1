/** Name and version as reports state them; a test holds the version to package.json. */
export const tool = { name: 'wattassay', version: '0.1.0' } as const;
