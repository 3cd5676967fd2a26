// SPDX-License-Identifier: GPL-3.0-or-later
// The row that stands for a machine, and the model that its class has.
#include "physics/start_machine.h"

#include "physics/plate_induction.h"
#include "physics/start_dc.h"
#include "physics/start_envelope.h"
#include "physics/start_induction.h"
#include "tables/table.h"

namespace cordreach::physics {
namespace {

bool isInduction(LoadModel model) { return model == LoadModel::Induction || model == LoadModel::InductionFan; }

// Nothing for a class whose start is known as a whole only.
const tables::Row* rowOf(const StartMachine& machine) {
  const bool induction = isInduction(machine.plate.model);
  if (!induction && machine.plate.model != LoadModel::RectifiedDc) return nullptr;
  const std::string loadClass = induction ? "induction" : "rectified-dc";
  const tables::Table& table = tables::table("start_inertia");
  const tables::Row* row = table.find(machine.kind + "." + loadClass);
  return row != nullptr ? row : &table.at(loadClass);
}

double bandOf(const tables::Row& row, const std::string& name, StartEdge edge) {
  return row.number(name + (edge == StartEdge::Low ? "_low" : edge == StartEdge::High ? "_high" : "_likely"));
}

StartEdge otherEnd(StartEdge edge) {
  if (edge == StartEdge::Typical) return edge;
  return edge == StartEdge::Low ? StartEdge::High : StartEdge::Low;
}

double inertiaOf(const StartMachine& machine, const tables::Row& row, StartEdge edge) {
  return machine.inertiaKgM2.value_or(bandOf(row, "inertia", edge));
}

base::Result<StartRun> inductionStart(const StartMachine& machine, const tables::Row& row, StartEdge edge,
                                      const Thevenin& supply) {
  Nameplate plate = machine.plate;
  if (!plate.speedRpm) plate.speedRpm = row.number("speed_rpm");
  auto load = inductionLoadOf(plate);
  if (!load) return load.error();
  const auto amps = startAmps(machine, edge);
  if (!amps) return amps.error();
  InductionStart start{std::move(load).value(), inertiaOf(machine, row, edge), amps.value().si(),
                       bandOf(row, "torque", otherEnd(edge))};
  start.load.torqueFactor *= bandOf(row, "drag", edge);
  return startInduction(start, supply);
}

StartRun rectifiedStart(const StartMachine& machine, const tables::Row& row, StartEdge edge, const Thevenin& supply) {
  const Nameplate& plate = machine.plate;
  RectifiedStart start;
  start.motor.voltage = plate.voltage;
  start.motor.current = plate.runningCurrent.value_or(plate.current);
  start.motor.speedRpm = plate.speedRpm.value_or(row.number("speed_rpm"));
  start.motor.torqueFactor = plate.torqueFactor * bandOf(row, "drag", edge);
  start.inertiaKgM2 = inertiaOf(machine, row, edge);
  return startRectified(start, supply);
}

}  // namespace

base::Result<units::Current> startAmps(const StartMachine& machine, StartEdge edge) {
  const Nameplate& plate = machine.plate;
  if (!plate.lockedRotorCurrent && machine.codeLetter && plate.shaftPower) {
    const auto amps = lockedRotorAmps(*machine.codeLetter, *plate.shaftPower, plate.voltage);
    if (!amps) return amps.error();
    const units::Current low = amps.value().low;
    const units::Current high = amps.value().high.value_or(low);
    return edge == StartEdge::Low ? low : edge == StartEdge::High ? high : 0.5 * (low + high);
  }
  return startBand(plate).peak(edge);
}

base::Result<StartRun> startOf(const StartMachine& machine, StartEdge edge, const Thevenin& supply) {
  if (auto error = plateError(machine.plate)) return *error;
  const tables::Row* row = rowOf(machine);
  if (row == nullptr) return startByClass(machine.plate, edge, supply);
  if (isInduction(machine.plate.model)) return inductionStart(machine, *row, edge, supply);
  return rectifiedStart(machine, *row, edge, supply);
}

bool startsTipped(const StartMachine& machine) {
  const tables::Row* row = rowOf(machine);
  return row != nullptr && row->number("drag_likely") == 0.0;
}

}  // namespace cordreach::physics
