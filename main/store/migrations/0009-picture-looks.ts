/** How each picture looks in a few numbers, for finding near-doubles; null until it was looked at. */
export const pictureLooks = `
alter table photos add column look text;
`
