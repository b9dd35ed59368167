/** What is chosen for a job's scope of work, and the prices taken from the contractor's own file; one row a job each. */
export const scopes = `
create table scopes (
  job_id text primary key references jobs (id),
  data text not null
) strict;

create table price_books (
  job_id text primary key references jobs (id),
  data text not null
) strict;
`
