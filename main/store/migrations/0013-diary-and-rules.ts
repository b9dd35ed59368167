/**
 * Rules of the library's own, every version kept, and shipped ones that were hidden; a job's diary, and the clocks that
 * were asked for in it.
 */
export const diaryAndRules = `
create table own_rules (
  key text not null,
  version integer not null,
  data text not null,
  saved_at_ms integer not null,
  saved_by text not null,
  primary key (key, version)
) strict;

create table rules_put_away (
  key text primary key
) strict;

create table diary_entries (
  id text primary key,
  job_id text not null references jobs (id),
  number integer not null,
  data text not null,
  unique (job_id, number)
) strict;

create table diary_clocks (
  id text primary key,
  job_id text not null references jobs (id),
  name text not null,
  data text not null,
  unique (job_id, name)
) strict;
`
