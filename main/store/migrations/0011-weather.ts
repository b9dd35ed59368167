/** Stations, where observations come from, and what was chosen for looking at them. */
export const weather = ['weather_stations', 'weather_sources', 'weather_choices']
  .map(
    (table) => `
create table ${table} (
  id text primary key,
  job_id text not null references jobs (id),
  name text not null,
  data text not null,
  unique (job_id, name)
) strict;
`,
  )
  .join('')
