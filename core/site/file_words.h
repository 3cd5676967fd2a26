// SPDX-License-Identifier: GPL-3.0-or-later
// The words that stand for enumerations in files, console output and edits. Stable: a word is never reused.
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "site/site.h"

namespace cordreach::site {

template <class Enum>
struct FileWord {
  Enum value;
  std::string_view word;
};

// All words of an enumeration, in its order.
template <class Enum>
inline constexpr std::array<FileWord<Enum>, 0> kFileWords{};

template <>
inline constexpr std::array kFileWords<WiringSystem> = {
    FileWord<WiringSystem>{WiringSystem::SplitPhase120, "split-phase-120"},
    FileWord<WiringSystem>{WiringSystem::Wye208, "wye-208"},
    FileWord<WiringSystem>{WiringSystem::Single120, "single-120"},
    FileWord<WiringSystem>{WiringSystem::Single230, "single-230"},
    FileWord<WiringSystem>{WiringSystem::Wye400, "wye-400"}};

template <>
inline constexpr std::array kFileWords<SupplyKindOfSource> = {
    FileWord<SupplyKindOfSource>{SupplyKindOfSource::Utility, "utility"},
    FileWord<SupplyKindOfSource>{SupplyKindOfSource::Generator, "generator"},
    FileWord<SupplyKindOfSource>{SupplyKindOfSource::Inverter, "inverter"}};

template <>
inline constexpr std::array kFileWords<BreakerCurve> = {
    FileWord<BreakerCurve>{BreakerCurve::ThermalMagnetic, "thermal-magnetic"},
    FileWord<BreakerCurve>{BreakerCurve::IecB, "iec-b"}, FileWord<BreakerCurve>{BreakerCurve::IecC, "iec-c"},
    FileWord<BreakerCurve>{BreakerCurve::IecD, "iec-d"}, FileWord<BreakerCurve>{BreakerCurve::Fuse, "fuse"}};

template <>
inline constexpr std::array kFileWords<UseClass> = {FileWord<UseClass>{UseClass::Ordinary, "ordinary"},
                                                    FileWord<UseClass>{UseClass::AskFirst, "ask-first"},
                                                    FileWord<UseClass>{UseClass::Never, "never"}};

template <>
inline constexpr std::array kFileWords<Metal> = {FileWord<Metal>{Metal::Copper, "copper"},
                                                 FileWord<Metal>{Metal::Aluminium, "aluminium"}};

template <>
inline constexpr std::array kFileWords<HowKnown> = {FileWord<HowKnown>{HowKnown::Traced, "traced"},
                                                    FileWord<HowKnown>{HowKnown::Assumed, "assumed"},
                                                    FileWord<HowKnown>{HowKnown::Directory, "directory"}};

template <>
inline constexpr std::array kFileWords<Pin> = {FileWord<Pin>{Pin::Present, "present"},
                                               FileWord<Pin>{Pin::Missing, "missing"},
                                               FileWord<Pin>{Pin::NotNeeded, "not-needed"}};

template <>
inline constexpr std::array kFileWords<tables::LoadClass> = {
    FileWord<tables::LoadClass>{tables::LoadClass::Induction, "induction"},
    FileWord<tables::LoadClass>{tables::LoadClass::RectifiedDc, "rectified-dc"},
    FileWord<tables::LoadClass>{tables::LoadClass::Universal, "universal"},
    FileWord<tables::LoadClass>{tables::LoadClass::Resistance, "resistance"},
    FileWord<tables::LoadClass>{tables::LoadClass::Electronic, "electronic"},
    FileWord<tables::LoadClass>{tables::LoadClass::Compressor, "compressor"},
    FileWord<tables::LoadClass>{tables::LoadClass::PhaseControlled, "phase-controlled"}};

template <>
inline constexpr std::array kFileWords<tables::Laying> = {
    FileWord<tables::Laying>{tables::Laying::Straight, "straight"},
    FileWord<tables::Laying>{tables::Laying::Floor, "floor"},
    FileWord<tables::Laying>{tables::Laying::Carpet, "carpet"},
    FileWord<tables::Laying>{tables::Laying::Covered, "covered"},
    FileWord<tables::Laying>{tables::Laying::Coiled, "coiled"},
    FileWord<tables::Laying>{tables::Laying::Reel, "reel"}};

template <>
inline constexpr std::array kFileWords<FaceColour> = {
    FileWord<FaceColour>{FaceColour::Unknown, "unknown"}, FileWord<FaceColour>{FaceColour::White, "white"},
    FileWord<FaceColour>{FaceColour::Ivory, "ivory"},     FileWord<FaceColour>{FaceColour::Grey, "grey"},
    FileWord<FaceColour>{FaceColour::Brown, "brown"},     FileWord<FaceColour>{FaceColour::Black, "black"},
    FileWord<FaceColour>{FaceColour::Red, "red"},         FileWord<FaceColour>{FaceColour::Orange, "orange"},
    FileWord<FaceColour>{FaceColour::Blue, "blue"},       FileWord<FaceColour>{FaceColour::Green, "green"}};

template <>
inline constexpr std::array kFileWords<PadFamily> = {
    FileWord<PadFamily>{PadFamily::Unknown, "unknown"}, FileWord<PadFamily>{PadFamily::SlowSpeed, "slow-speed"},
    FileWord<PadFamily>{PadFamily::SprayBuff, "spray-buff"}, FileWord<PadFamily>{PadFamily::Burnish, "burnish"}};

template <>
inline constexpr std::array kFileWords<PadCondition> = {FileWord<PadCondition>{PadCondition::Sound, "sound"},
                                                        FileWord<PadCondition>{PadCondition::Worn, "worn"},
                                                        FileWord<PadCondition>{PadCondition::Loaded, "loaded"}};

template <>
inline constexpr std::array kFileWords<EventKind> = {
    FileWord<EventKind>{EventKind::Start, "start"},          FileWord<EventKind>{EventKind::Stop, "stop"},
    FileWord<EventKind>{EventKind::PlugIn, "plug-in"},       FileWord<EventKind>{EventKind::Unplug, "unplug"},
    FileWord<EventKind>{EventKind::ChangePad, "change-pad"}, FileWord<EventKind>{EventKind::Lay, "lay"},
    FileWord<EventKind>{EventKind::LoadOn, "load-on"},       FileWord<EventKind>{EventKind::LoadOff, "load-off"},
    FileWord<EventKind>{EventKind::ContactOn, "contact-on"}, FileWord<EventKind>{EventKind::ContactOff, "contact-off"}};

template <class Enum>
[[nodiscard]] constexpr std::string_view fileWord(Enum value) {
  for (const auto& entry : kFileWords<Enum>) {
    if (entry.value == value) return entry.word;
  }
  return {};
}

template <class Enum>
[[nodiscard]] constexpr std::optional<Enum> fromFileWord(std::string_view word) {
  for (const auto& entry : kFileWords<Enum>) {
    if (entry.word == word) return entry.value;
  }
  return std::nullopt;
}

}  // namespace cordreach::site
