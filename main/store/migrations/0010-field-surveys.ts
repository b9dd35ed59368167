/** What a job's readings are held against and everything else that was counted on the roof; one row a job. */
export const fieldSurveys = `
create table field_surveys (
  job_id text primary key references jobs (id),
  data text not null
) strict;
`
