-- SPDX-License-Identifier: GPL-3.0-or-later
-- What a book of the first schema may hold: one cone from pollination to plants sold, with a mistake taken back. Invented.
INSERT INTO book VALUES (1, 'Invented nursery', 17, 1, '2024-01-01');
INSERT INTO taxon VALUES (1, 'Cycas revoluta', 'not known', '', 'part shade', 'common practice, no source', 'not known', '', 'reliable',
  'own seed', 10, 14, 'common practice, no source', 0, 6, 'common practice, no source');
INSERT INTO place VALUES (1, 1, 'House', 'house', NULL, 0, 0, 'part shade', 1), (2, 2, 'Bench', 'bench', 1, 3000, 1200, 'part shade', 2);
INSERT INTO pot VALUES (1, 'seed tray', 5, 'rectangular', 400, 300, 40, 'measured'), (2, '1 L deep', 1, 'round', 100, 100, 1, 'measured');
INSERT INTO mix VALUES (1, 'gritty', 0.15, 0.02, 'measured');
INSERT INTO mix_part VALUES (1, 1, 'perlite', 4), (1, 2, 'peat', 3);
INSERT INTO plant VALUES (1, 1, 'Old Gate', 1, 'certain', 'female', 'a friend', '1999-05-01', 2, ''),
  (2, 2, 'Tall Male', 1, 'certain', 'male', '', NULL, NULL, 'at the gate');
INSERT INTO pollen_lot VALUES (1, 1, 2, '2024-05-01', 2, 'refrigerator', '');
INSERT INTO cone VALUES (1, 1, 1, '2024-04-20', '');
INSERT INTO lot VALUES (1, 'batch', 1, 1, NULL, 'not judged', 'none', NULL, NULL, ''), (2, 'tray', 1, 1, NULL, 'filled', 'float', 1, 1, ''),
  (3, 'pot group', 1, 1, NULL, 'filled', 'float', 2, 1, '');
INSERT INTO entry VALUES (1, 'pollinate', '2024-05-10', NULL, 1, NULL, 'Ann', '', NULL, '2024-05-10T08:00:00Z'),
  (2, 'harvest', '2025-05-04', 1, NULL, NULL, 'Ann', 'after rain', NULL, '2025-05-04T08:00:00Z'),
  (3, 'clean', '2025-05-08', 1, NULL, NULL, '', '', NULL, '2025-05-08T08:00:00Z'),
  (4, 'sort', '2025-05-08', 1, NULL, NULL, '', '', NULL, '2025-05-08T09:00:00Z'),
  (5, 'sow', '2025-05-10', 2, NULL, 2, '', '', NULL, '2025-05-10T08:00:00Z'),
  (6, 'inspect', '2025-08-01', 2, NULL, NULL, '', '', NULL, '2025-08-01T08:00:00Z'),
  (7, 'inspect', '2025-08-01', 2, NULL, NULL, '', 'counted twice', NULL, '2025-08-01T08:01:00Z'),
  (8, 'reverse', '2025-08-01', 2, NULL, NULL, '', '', 7, '2025-08-01T08:02:00Z'),
  (9, 'pot', '2026-02-01', 3, NULL, 2, '', '', NULL, '2026-02-01T08:00:00Z'),
  (10, 'sell', '2026-06-01', 3, NULL, NULL, '', '', NULL, '2026-06-01T08:00:00Z');
INSERT INTO pollination VALUES (1, 'dry');
INSERT INTO pollination_pollen VALUES (1, 1, 1, 0.5);
INSERT INTO cleaning VALUES (3, 3);
INSERT INTO sorting VALUES (4, 'float');
INSERT INTO sale VALUES (10, 'a collector', 4500);
INSERT INTO movement (entry_id, from_lot, from_state, to_lot, to_state, count) VALUES (2, 1, 'cone', 1, 'unsorted', 240),
  (3, 1, 'unsorted', 1, 'lost in cleaning', 4), (4, 1, 'unsorted', 1, 'judged filled', 180), (4, 1, 'unsorted', 1, 'judged empty', 56),
  (5, 1, 'judged filled', 2, 'sown', 40), (6, 2, 'sown', 2, 'root', 30), (7, 2, 'sown', 2, 'root', 5),
  (8, 2, 'root', 2, 'sown', 5), (9, 2, 'root', 3, 'plant', 28), (10, 3, 'plant', 3, 'sold', 3);
