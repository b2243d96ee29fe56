-- Guards of the trade, among rows in force. The program asks first; these refuse what a form forgot to. A time from until
-- to leaves its last moment out; without an end it lasts for ever. As the times in one place never overlap, only the one
-- that began last before the new one ends can reach into it. A row in conflict is let be until people settle it.

-- A name is taken once.
CREATE TRIGGER engine_name_insert BEFORE INSERT ON engine
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM engine WHERE standing = 'in force' AND number = NEW.number AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER engine_name_update BEFORE UPDATE ON engine
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM engine WHERE standing = 'in force' AND number = NEW.number AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER car_name_insert BEFORE INSERT ON car
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM car WHERE standing = 'in force' AND name = NEW.name AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER car_name_update BEFORE UPDATE ON car
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM car WHERE standing = 'in force' AND name = NEW.name AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER person_name_insert BEFORE INSERT ON person
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM person WHERE standing = 'in force' AND name = NEW.name AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER person_name_update BEFORE UPDATE ON person
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM person WHERE standing = 'in force' AND name = NEW.name AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER event_name_insert BEFORE INSERT ON event
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM event WHERE standing = 'in force' AND name = NEW.name AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER event_name_update BEFORE UPDATE ON event
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM event WHERE standing = 'in force' AND name = NEW.name AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER engine_design_name_insert BEFORE INSERT ON engine_design
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM engine_design WHERE standing = 'in force' AND name = NEW.name AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER engine_design_name_update BEFORE UPDATE ON engine_design
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM engine_design WHERE standing = 'in force' AND name = NEW.name AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER part_design_name_insert BEFORE INSERT ON part_design
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM part_design WHERE standing = 'in force' AND name = NEW.name AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER part_design_name_update BEFORE UPDATE ON part_design
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM part_design WHERE standing = 'in force' AND name = NEW.name AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER part_name_insert BEFORE INSERT ON part
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM part WHERE standing = 'in force' AND mark = NEW.mark AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER part_name_update BEFORE UPDATE ON part
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM part WHERE standing = 'in force' AND mark = NEW.mark AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER build_name_insert BEFORE INSERT ON build
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM build WHERE standing = 'in force' AND number = NEW.number AND engine_id = NEW.engine_id AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER build_name_update BEFORE UPDATE ON build
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM build WHERE standing = 'in force' AND number = NEW.number AND engine_id = NEW.engine_id AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER set_member_name_insert BEFORE INSERT ON set_member
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM set_member WHERE standing = 'in force' AND mark = NEW.mark AND set_id = NEW.set_id AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER set_member_name_update BEFORE UPDATE ON set_member
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM set_member WHERE standing = 'in force' AND mark = NEW.mark AND set_id = NEW.set_id AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER planned_run_name_insert BEFORE INSERT ON planned_run
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM planned_run WHERE standing = 'in force' AND name = NEW.name AND event_id = NEW.event_id AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER planned_run_name_update BEFORE UPDATE ON planned_run
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM planned_run WHERE standing = 'in force' AND name = NEW.name AND event_id = NEW.event_id AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER position_name_insert BEFORE INSERT ON position
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM position WHERE standing = 'in force' AND name = NEW.name
    AND design_id IS NEW.design_id AND car_id IS NEW.car_id AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER position_name_update BEFORE UPDATE ON position
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM position WHERE standing = 'in force' AND name = NEW.name
    AND design_id IS NEW.design_id AND car_id IS NEW.car_id AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;

-- There is one team.
CREATE TRIGGER team_one_insert BEFORE INSERT ON team
WHEN NEW.standing = 'in force' AND EXISTS (SELECT 1 FROM team WHERE standing = 'in force' AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER team_one_update BEFORE UPDATE ON team
WHEN NEW.standing = 'in force' AND EXISTS (SELECT 1 FROM team WHERE standing = 'in force' AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;

-- One part in a position of an engine or a car at a moment.
CREATE TRIGGER fitment_position_insert BEFORE INSERT ON fitment
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM (SELECT other.to_utc_ms FROM fitment AS other
    WHERE other.standing = 'in force' AND other.position_id = NEW.position_id
      AND other.engine_id IS NEW.engine_id AND other.car_id IS NEW.car_id AND other.id <> NEW.id
      AND other.from_utc_ms < coalesce(NEW.to_utc_ms, 9223372036854775807)
    ORDER BY other.from_utc_ms DESC LIMIT 1) AS last WHERE last.to_utc_ms IS NULL OR NEW.from_utc_ms < last.to_utc_ms)
BEGIN SELECT RAISE(ABORT, 'TWO_PARTS_IN_POSITION'); END;
CREATE TRIGGER fitment_position_update BEFORE UPDATE ON fitment
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM (SELECT other.to_utc_ms FROM fitment AS other
    WHERE other.standing = 'in force' AND other.position_id = NEW.position_id
      AND other.engine_id IS NEW.engine_id AND other.car_id IS NEW.car_id AND other.id <> NEW.id
      AND other.from_utc_ms < coalesce(NEW.to_utc_ms, 9223372036854775807)
    ORDER BY other.from_utc_ms DESC LIMIT 1) AS last WHERE last.to_utc_ms IS NULL OR NEW.from_utc_ms < last.to_utc_ms)
BEGIN SELECT RAISE(ABORT, 'TWO_PARTS_IN_POSITION'); END;

-- A part that may be fitted once is fitted once.
CREATE TRIGGER fitment_single_use_insert BEFORE INSERT ON fitment
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM fitment AS other WHERE other.standing = 'in force' AND other.part_id = NEW.part_id AND other.id <> NEW.id)
  AND EXISTS (SELECT 1 FROM part JOIN part_design ON part_design.id = part.design_id
    WHERE part.id = NEW.part_id AND part_design.single_use = 1)
BEGIN SELECT RAISE(ABORT, 'SINGLE_USE_AGAIN'); END;
CREATE TRIGGER fitment_single_use_update BEFORE UPDATE ON fitment
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM fitment AS other WHERE other.standing = 'in force' AND other.part_id = NEW.part_id AND other.id <> NEW.id)
  AND EXISTS (SELECT 1 FROM part JOIN part_design ON part_design.id = part.design_id
    WHERE part.id = NEW.part_id AND part_design.single_use = 1)
BEGIN SELECT RAISE(ABORT, 'SINGLE_USE_AGAIN'); END;
CREATE TRIGGER part_single_use_update BEFORE UPDATE ON part
WHEN NEW.design_id <> OLD.design_id AND NEW.standing = 'in force'
  AND (SELECT single_use FROM part_design WHERE id = NEW.design_id) = 1
  AND (SELECT count(*) FROM fitment WHERE standing = 'in force' AND part_id = NEW.id) > 1
BEGIN SELECT RAISE(ABORT, 'SINGLE_USE_AGAIN'); END;
CREATE TRIGGER part_design_single_use_update BEFORE UPDATE ON part_design
WHEN NEW.single_use = 1 AND OLD.single_use = 0
  AND EXISTS (SELECT 1 FROM part WHERE part.standing = 'in force' AND part.design_id = NEW.id
    AND (SELECT count(*) FROM fitment WHERE fitment.standing = 'in force' AND fitment.part_id = part.id) > 1)
BEGIN SELECT RAISE(ABORT, 'SINGLE_USE_AGAIN'); END;

-- One place for a part at a moment.
CREATE TRIGGER fitment_part_insert BEFORE INSERT ON fitment
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM (SELECT other.to_utc_ms FROM fitment AS other
    WHERE other.standing = 'in force' AND other.part_id = NEW.part_id AND other.id <> NEW.id
      AND other.from_utc_ms < coalesce(NEW.to_utc_ms, 9223372036854775807)
    ORDER BY other.from_utc_ms DESC LIMIT 1) AS last WHERE last.to_utc_ms IS NULL OR NEW.from_utc_ms < last.to_utc_ms)
BEGIN SELECT RAISE(ABORT, 'PART_IN_TWO_PLACES'); END;
CREATE TRIGGER fitment_part_update BEFORE UPDATE ON fitment
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM (SELECT other.to_utc_ms FROM fitment AS other
    WHERE other.standing = 'in force' AND other.part_id = NEW.part_id AND other.id <> NEW.id
      AND other.from_utc_ms < coalesce(NEW.to_utc_ms, 9223372036854775807)
    ORDER BY other.from_utc_ms DESC LIMIT 1) AS last WHERE last.to_utc_ms IS NULL OR NEW.from_utc_ms < last.to_utc_ms)
BEGIN SELECT RAISE(ABORT, 'PART_IN_TWO_PLACES'); END;

-- One car for an engine, one engine in a car, at a moment.
CREATE TRIGGER engine_in_car_engine_insert BEFORE INSERT ON engine_in_car
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM (SELECT other.to_utc_ms FROM engine_in_car AS other
    WHERE other.standing = 'in force' AND other.engine_id = NEW.engine_id AND other.id <> NEW.id
      AND other.from_utc_ms < coalesce(NEW.to_utc_ms, 9223372036854775807)
    ORDER BY other.from_utc_ms DESC LIMIT 1) AS last WHERE last.to_utc_ms IS NULL OR NEW.from_utc_ms < last.to_utc_ms)
BEGIN SELECT RAISE(ABORT, 'ENGINE_IN_TWO_CARS'); END;
CREATE TRIGGER engine_in_car_engine_update BEFORE UPDATE ON engine_in_car
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM (SELECT other.to_utc_ms FROM engine_in_car AS other
    WHERE other.standing = 'in force' AND other.engine_id = NEW.engine_id AND other.id <> NEW.id
      AND other.from_utc_ms < coalesce(NEW.to_utc_ms, 9223372036854775807)
    ORDER BY other.from_utc_ms DESC LIMIT 1) AS last WHERE last.to_utc_ms IS NULL OR NEW.from_utc_ms < last.to_utc_ms)
BEGIN SELECT RAISE(ABORT, 'ENGINE_IN_TWO_CARS'); END;
CREATE TRIGGER engine_in_car_car_insert BEFORE INSERT ON engine_in_car
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM (SELECT other.to_utc_ms FROM engine_in_car AS other
    WHERE other.standing = 'in force' AND other.car_id = NEW.car_id AND other.id <> NEW.id
      AND other.from_utc_ms < coalesce(NEW.to_utc_ms, 9223372036854775807)
    ORDER BY other.from_utc_ms DESC LIMIT 1) AS last WHERE last.to_utc_ms IS NULL OR NEW.from_utc_ms < last.to_utc_ms)
BEGIN SELECT RAISE(ABORT, 'TWO_ENGINES_IN_CAR'); END;
CREATE TRIGGER engine_in_car_car_update BEFORE UPDATE ON engine_in_car
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM (SELECT other.to_utc_ms FROM engine_in_car AS other
    WHERE other.standing = 'in force' AND other.car_id = NEW.car_id AND other.id <> NEW.id
      AND other.from_utc_ms < coalesce(NEW.to_utc_ms, 9223372036854775807)
    ORDER BY other.from_utc_ms DESC LIMIT 1) AS last WHERE last.to_utc_ms IS NULL OR NEW.from_utc_ms < last.to_utc_ms)
BEGIN SELECT RAISE(ABORT, 'TWO_ENGINES_IN_CAR'); END;

-- A planned run is taken once by a car; a run that is perhaps another one again does not count.
CREATE TRIGGER run_planned_insert BEFORE INSERT ON run
WHEN NEW.standing = 'in force' AND NEW.planned_id IS NOT NULL AND NEW.perhaps_same_id IS NULL
  AND EXISTS (SELECT 1 FROM run AS other WHERE other.standing = 'in force' AND other.perhaps_same_id IS NULL
    AND other.planned_id = NEW.planned_id AND other.car_id IS NEW.car_id AND other.id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'PLANNED_RUN_TAKEN'); END;
CREATE TRIGGER run_planned_update BEFORE UPDATE ON run
WHEN NEW.standing = 'in force' AND NEW.planned_id IS NOT NULL AND NEW.perhaps_same_id IS NULL
  AND EXISTS (SELECT 1 FROM run AS other WHERE other.standing = 'in force' AND other.perhaps_same_id IS NULL
    AND other.planned_id = NEW.planned_id AND other.car_id IS NEW.car_id AND other.id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'PLANNED_RUN_TAKEN'); END;
