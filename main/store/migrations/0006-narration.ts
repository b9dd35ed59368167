/** Recordings with their cues, and what people decided about the drafts that were read from them. */
export const narration = `
create table narrations (
  id text primary key,
  job_id text not null references jobs (id),
  name text not null,
  data text not null,
  unique (job_id, name)
) strict;

create table draft_decisions (
  id text primary key,
  job_id text not null references jobs (id),
  draft_key text not null,
  data text not null,
  unique (job_id, draft_key)
) strict;
`
