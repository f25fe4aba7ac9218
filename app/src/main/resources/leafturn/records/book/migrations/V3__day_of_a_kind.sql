-- Which lawns have entries after a day is asked for every page of the round.
create index sheet_of_day on sheet (kind, on_day);
