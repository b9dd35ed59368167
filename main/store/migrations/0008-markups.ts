/** What is drawn over photos. */
export const markups = `
create table markups (
  photo_id text primary key references photos (id),
  job_id text not null references jobs (id),
  data text not null
) strict;

create index markups_of_job on markups (job_id);
`
