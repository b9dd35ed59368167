/** What people state for a job's assessment; one row a job. */
export const assessments = `
create table assessments (
  job_id text primary key references jobs (id),
  data text not null
) strict;
`
