-- Says which form the file has, within the transaction that brings it there. The 0 is put in as the number itself: a
-- PRAGMA takes no parameter.
PRAGMA user_version = 0;
