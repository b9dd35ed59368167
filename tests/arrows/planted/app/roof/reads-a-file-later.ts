export const outline = async () => (await import('node:fs')).readFileSync('outline.txt', 'utf8')
