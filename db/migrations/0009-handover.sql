-- handover: what a coach adds to the document of one bag. A bag without a row has nothing added. The letterhead is
-- everybody's and lives among the settings.
CREATE TABLE handover (
  bag_id INTEGER PRIMARY KEY REFERENCES bag (id) ON DELETE CASCADE,
  cover_note TEXT CHECK (length(cover_note) BETWEEN 1 AND 10000),
  language TEXT CHECK (language GLOB '[a-z][a-z]'), -- NULL: the window's
  retest_on TEXT CHECK (date(retest_on) = retest_on AND length(retest_on) = 10) -- NULL: the usual half year
) STRICT;
