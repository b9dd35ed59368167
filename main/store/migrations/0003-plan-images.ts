/** Images under the plan; their files are kept as attachments or photos. */
export const planImages = `
create table plan_images (
  id text primary key,
  job_id text not null references jobs (id),
  file_id text not null,
  data text not null,
  unique (job_id, file_id)
) strict;
`
