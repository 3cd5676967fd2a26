# SPDX-License-Identifier: GPL-3.0-or-later
# A script: writes OUTPUT, a C++ file whose FUNCTION in NAMESPACE answers {name without ending, content} of each of FILES.
set(row "std::pair<std::string_view, std::string_view>")
set(rows "")
set(count 0)
foreach(file IN LISTS FILES)
  get_filename_component(name "${file}" NAME_WLE)
  file(READ "${file}" content)
  string(FIND "${content}" ")~~~\"" closing)
  if(NOT closing EQUAL -1)
    message(FATAL_ERROR "${file} holds )~~~\", which ends the string literal it would be embedded in")
  endif()
  string(LENGTH "${content}" length)
  file(SIZE "${file}" size)
  if(NOT length EQUAL size)
    message(FATAL_ERROR "${file} can't be embedded as text: ${size} bytes, of which ${length} were read")
  endif()
  set(literal "")
  set(position 0)
  # A compiler need not take a literal over 65,536 bytes, so a long file becomes adjoining ones, cut at line ends so that
  # no character of several bytes is torn.
  while(position LESS length)
    string(SUBSTRING "${content}" ${position} 12000 piece)
    string(FIND "${piece}" "\n" end REVERSE)
    if(end GREATER -1)
      math(EXPR end "${end} + 1")
      string(SUBSTRING "${piece}" 0 ${end} piece)
    endif()
    string(LENGTH "${piece}" taken)
    string(APPEND literal "R\"~~~(${piece})~~~\"\n")
    math(EXPR position "${position} + ${taken}")
  endwhile()
  if(literal STREQUAL "")
    set(literal "\"\"")
  endif()
  string(APPEND rows "    {\"${name}\", ${literal}},\n")
  math(EXPR count "${count} + 1")
endforeach()

file(WRITE "${OUTPUT}" "#include <span>
#include <string_view>
#include <utility>
namespace ${NAMESPACE} {
static constexpr ${row} kFiles[] = {
${rows}    {\"\", \"\"}};
std::span<const ${row}> ${FUNCTION}();
std::span<const ${row}> ${FUNCTION}() { return {kFiles, ${count}}; }
}  // namespace ${NAMESPACE}
")
