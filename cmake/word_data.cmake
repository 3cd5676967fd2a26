# SPDX-License-Identifier: GPL-3.0-or-later
# The words of every language compiled in, as the tables are.
file(GLOB word_files CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/resources/words/*.json)
cordreach_embed(cordreach_word_data NAMESPACE cordreach::text FUNCTION embeddedWords FILES ${word_files})
