/** Outlines, from which facets follow. */
export const outlines = `
create table outlines (
  id text primary key,
  job_id text not null references jobs (id),
  name text not null,
  data text not null,
  unique (job_id, name)
) strict;
`
