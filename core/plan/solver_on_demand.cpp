// SPDX-License-Identifier: GPL-3.0-or-later
// The solver's own functions, each handed on to the library, which is loaded with the first call:
// it and what it needs make a quarter of the time that all libraries of a start take.
#include "core/base/on_demand.h"

#include <coin/Cbc_C_Interface.h>

extern "C" {
double* Cbc_bestSolution(Cbc_Model* model) {
  return CONELINE_LOADED(Cbc_bestSolution)(model);
}
void Cbc_deleteModel(Cbc_Model* model) {
  CONELINE_LOADED(Cbc_deleteModel)(model);
}
double Cbc_getBestPossibleObjValue(Cbc_Model* model) {
  return CONELINE_LOADED(Cbc_getBestPossibleObjValue)(model);
}
double Cbc_getObjValue(Cbc_Model* model) {
  return CONELINE_LOADED(Cbc_getObjValue)(model);
}
const double* Cbc_getColSolution(Cbc_Model* model) {
  return CONELINE_LOADED(Cbc_getColSolution)(model);
}
int Cbc_getNumIntegers(Cbc_Model* model) {
  return CONELINE_LOADED(Cbc_getNumIntegers)(model);
}
int Cbc_isAbandoned(Cbc_Model* model) {
  return CONELINE_LOADED(Cbc_isAbandoned)(model);
}
int Cbc_isInitialSolveProvenOptimal(Cbc_Model* model) {
  return CONELINE_LOADED(Cbc_isInitialSolveProvenOptimal)(model);
}
int Cbc_isInitialSolveProvenPrimalInfeasible(Cbc_Model* model) {
  return CONELINE_LOADED(Cbc_isInitialSolveProvenPrimalInfeasible)(model);
}
int Cbc_isProvenInfeasible(Cbc_Model* model) {
  return CONELINE_LOADED(Cbc_isProvenInfeasible)(model);
}
int Cbc_isProvenOptimal(Cbc_Model* model) {
  return CONELINE_LOADED(Cbc_isProvenOptimal)(model);
}
void Cbc_loadProblem(Cbc_Model* model, const int numcols, const int numrows,
                     const CoinBigIndex* start, const int* index, const double* value,
                     const double* collb, const double* colub, const double* obj,
                     const double* rowlb, const double* rowub) {
  CONELINE_LOADED(Cbc_loadProblem)
  (model, numcols, numrows, start, index, value, collb, colub, obj, rowlb, rowub);
}
Cbc_Model* Cbc_newModel() {
  return CONELINE_LOADED(Cbc_newModel)();
}
void Cbc_setAllowableFractionGap(Cbc_Model* model, double allowedFracionGap) {
  CONELINE_LOADED(Cbc_setAllowableFractionGap)(model, allowedFracionGap);
}
void Cbc_setAllowableGap(Cbc_Model* model, double allowedGap) {
  CONELINE_LOADED(Cbc_setAllowableGap)(model, allowedGap);
}
void Cbc_setInteger(Cbc_Model* model, int iColumn) {
  CONELINE_LOADED(Cbc_setInteger)(model, iColumn);
}
void Cbc_setLogLevel(Cbc_Model* model, int logLevel) {
  CONELINE_LOADED(Cbc_setLogLevel)(model, logLevel);
}
void Cbc_setMaximumSeconds(Cbc_Model* model, double maxSeconds) {
  CONELINE_LOADED(Cbc_setMaximumSeconds)(model, maxSeconds);
}
void Cbc_setParameter(Cbc_Model* model, const char* name, const char* value) {
  CONELINE_LOADED(Cbc_setParameter)(model, name, value);
}
int Cbc_solve(Cbc_Model* model) {
  return CONELINE_LOADED(Cbc_solve)(model);
}
}
