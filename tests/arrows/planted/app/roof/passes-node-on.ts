export * from 'node:path'
