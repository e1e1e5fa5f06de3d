cmake_minimum_required(VERSION 3.21)
# The project speaks of itself alone, and its English is spelled right.
find_program(CODESPELL codespell REQUIRED)
find_program(GREP grep REQUIRED)
set(skip --exclude-dir=build --exclude-dir=.git --exclude=.git)

# Paths of one machine, and numbers that mean something only in somebody's list. Bracketed so that this file does
# not find itself. The protocol files speak French too and are left out of the spelling.
set(foreign "/[w]ork/" "/[h]ome/[a-z]" "[i]ssue [0-9]+" "[T]ODO" "[F]IXME")
list(JOIN foreign "|" pattern)
execute_process(COMMAND ${GREP} -rnIE ${skip} "${pattern}" ${ROOT} OUTPUT_VARIABLE found)
if(found)
  message(SEND_ERROR "Does not belong in the project:\n${found}")
endif()

execute_process(
  COMMAND ${CODESPELL} --skip ./build,./.git,./assets/protocols/*.json,./tests/fuzz/corpus,*.svg,*.png,*.csv,*.ts --ignore-words ${CMAKE_CURRENT_LIST_DIR}/words.txt .
  WORKING_DIRECTORY ${ROOT} RESULT_VARIABLE result OUTPUT_VARIABLE found)
if(NOT result EQUAL 0)
  message(SEND_ERROR "Misspelled, or to be added to tests/rules/words.txt:\n${found}")
endif()
