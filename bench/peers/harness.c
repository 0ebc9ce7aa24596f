/* The same networks by the same algorithm in C, and by general-purpose solvers.
 *
 *   harness METHOD NETWORKS SOLUTIONS REPEATS
 *   METHOD: own | kinsol | kinsol-klu | gsl-hybrid
 *
 * NETWORKS: the count; then for each network its zones and links, and a line a link:
 * from to coefficient exponent drive  (an end of -1 is a boundary; exponent 0 is a fixed flow).
 * A link sees x = p[from] - p[to] + drive, a boundary's pressure being part of the drive.
 * Prints the CPU time of a solve in microseconds (median of the repeats) and how many failed;
 * writes the pressures, a line a network.
 */
#include <gsl/gsl_multiroots.h>
#include <kinsol/kinsol.h>
#include <math.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunlinsol/sunlinsol_klu.h>
#include <sunmatrix/sunmatrix_dense.h>
#include <sunmatrix/sunmatrix_sparse.h>
#include <time.h>

#define WIDTH 1e-6
#define TOLERANCE 1e-9

typedef struct {
  int zones, links;
  int *from, *to;
  double *c, *n, *at_width, *drive, *chord;
  double *p, *trial, *F, *T, *d, *m, *g, *A; /* work; A dense, row after row */
  double scale;                              /* through-flow at zero pressure */
  /* kept between solves, as a careful user would */
  void *kin;
  N_Vector u, ones;
  SUNMatrix J;
  SUNLinearSolver ls;
  int *pattern_column, *pattern_row, *slot; /* for the sparse matrix */
  gsl_multiroot_fdfsolver *gsl;
} Network;

static double law(const Network *w, int e, double x, double *slope) {
  double n = w->n[e], c = w->c[e];
  if (n == 0) {
    *slope = 0;
    return c;
  }
  double size = fabs(x);
  if (size > WIDTH) {
    double flow = c * (n == 0.5 ? sqrt(size) : pow(size, n));
    *slope = n * flow / size;
    return x > 0 ? flow : -flow;
  }
  double s = x / WIDTH, f = 0.5 * c * w->at_width[e];
  *slope = f / WIDTH * (3 - n + 3 * (n - 1) * s * s);
  return f * s * (3 - n + (n - 1) * s * s);
}

static double difference(const Network *w, int e, const double *p) {
  double x = w->drive[e];
  if (w->from[e] >= 0) x += p[w->from[e]];
  if (w->to[e] >= 0) x -= p[w->to[e]];
  return x;
}

static void gather(Network *w) {
  memset(w->F, 0, w->zones * sizeof(double));
  memset(w->T, 0, w->zones * sizeof(double));
  for (int e = 0; e < w->links; e++) {
    int i = w->from[e], j = w->to[e];
    double size = fabs(w->m[e]);
    if (i >= 0) w->F[i] += w->m[e], w->T[i] += size;
    if (j >= 0) w->F[j] -= w->m[e], w->T[j] += size;
  }
}

static void sweep(Network *w, const double *p) {
  for (int e = 0; e < w->links; e++) w->m[e] = law(w, e, difference(w, e, p), &w->g[e]);
  gather(w);
}

static void matrix(Network *w) {
  int z = w->zones;
  memset(w->A, 0, (size_t)z * z * sizeof(double));
  for (int e = 0; e < w->links; e++) {
    int i = w->from[e], j = w->to[e];
    if (i >= 0) w->A[i * z + i] += w->g[e];
    if (j >= 0) w->A[j * z + j] += w->g[e];
    if (i >= 0 && j >= 0) w->A[(i > j ? i * z + j : j * z + i)] -= w->g[e];
  }
}

/* Dense LDL' of the lower triangle, then d = -A^-1 F. */
static int newton_step(Network *w) {
  int z = w->zones;
  double *A = w->A, *d = w->d;
  for (int i = 0; i < z; i++) {
    double *row = A + i * z;
    for (int j = 1; j < i; j++) {
      double *other = A + j * z, sum = row[j];
      for (int k = 0; k < j; k++) sum -= row[k] * other[k];
      row[j] = sum;
    }
    double pivot = row[i];
    for (int j = 0; j < i; j++) {
      double u = row[j];
      row[j] = u * A[j * z + j];
      pivot -= u * row[j];
    }
    if (!(pivot > 0)) return 0;
    row[i] = 1 / pivot;
  }
  for (int i = 0; i < z; i++) {
    double sum = -w->F[i];
    for (int k = 0; k < i; k++) sum -= A[i * z + k] * d[k];
    d[i] = sum;
  }
  for (int i = 0; i < z; i++) d[i] *= A[i * z + i];
  for (int i = z - 1; i > 0; i--)
    for (int k = 0; k < i; k++) d[k] -= A[i * z + k] * d[i];
  return 1;
}

static double excess(const Network *w) {
  double largest = 0, worst = 0;
  for (int i = 0; i < w->zones; i++) largest = fmax(largest, w->T[i]);
  for (int i = 0; i < w->zones; i++)
    worst = fmax(worst, fabs(w->F[i]) / fmax(w->T[i], 1e-6 * largest));
  return 2 * worst / TOLERANCE;
}

static double along(const Network *w) {
  double sum = 0;
  for (int i = 0; i < w->zones; i++) sum += w->F[i] * w->d[i];
  return sum;
}

/* Chord start, one step on flows, Newton with a line search on the directional derivative. */
static int solve_own(Network *w) {
  int z = w->zones;
  memset(w->p, 0, z * sizeof(double));
  for (int round = 0; round < 2; round++) {
    for (int e = 0; e < w->links; e++) {
      double x = difference(w, e, w->p), n = w->n[e];
      w->g[e] = n == 0 ? 0 : w->chord[e];
      w->m[e] = n == 0 ? w->c[e] : w->chord[e] * x;
      if (round == 0 || n == 0) continue;
      double ratio = fabs(w->m[e]) / w->c[e];
      if (ratio <= w->at_width[e]) continue;
      double base = n == 0.5 ? ratio * ratio : pow(ratio, 1 / n);
      w->g[e] = n * fabs(w->m[e]) / base;
      w->m[e] += w->g[e] * (x - copysign(base, w->m[e]));
    }
    gather(w);
    matrix(w);
    if (!newton_step(w)) return 0;
    for (int i = 0; i < z; i++) w->p[i] += w->d[i];
  }
  sweep(w, w->p);
  double worst = excess(w);
  for (int step = 0; worst > 1 && step < 200; step++) {
    matrix(w);
    if (!newton_step(w)) return 0;
    double start = along(w), t = 1;
    for (int trial = 0; trial < 60; trial++) {
      for (int i = 0; i < z; i++) w->trial[i] = w->p[i] + t * w->d[i];
      sweep(w, w->trial);
      worst = excess(w);
      double slope = along(w);
      if (worst <= 1 || slope <= -0.3 * start) break;
      t *= fmin(fmax(start / (start - slope), 0.1), 0.9);
    }
    memcpy(w->p, w->trial, z * sizeof(double));
  }
  return worst <= 1;
}

/* ---- KINSOL ---- */

static int kin_residual(N_Vector u, N_Vector f, void *data) {
  Network *w = data;
  sweep(w, N_VGetArrayPointer(u));
  memcpy(N_VGetArrayPointer(f), w->F, w->zones * sizeof(double));
  return 0;
}

static int kin_dense(N_Vector u, N_Vector f, SUNMatrix J, void *data, N_Vector a, N_Vector b) {
  (void)u, (void)f, (void)a, (void)b; /* slopes are those of the last residual */
  Network *w = data;
  for (int e = 0; e < w->links; e++) {
    int i = w->from[e], j = w->to[e];
    if (i >= 0) SM_ELEMENT_D(J, i, i) += w->g[e];
    if (j >= 0) SM_ELEMENT_D(J, j, j) += w->g[e];
    if (i >= 0 && j >= 0) SM_ELEMENT_D(J, i, j) -= w->g[e], SM_ELEMENT_D(J, j, i) -= w->g[e];
  }
  return 0;
}

static int kin_sparse(N_Vector u, N_Vector f, SUNMatrix J, void *data, N_Vector a, N_Vector b) {
  (void)u, (void)f, (void)a, (void)b;
  Network *w = data;
  double *v = SM_DATA_S(J);
  int nonzeros = w->pattern_column[w->zones];
  for (int k = 0; k <= w->zones; k++) SM_INDEXPTRS_S(J)[k] = w->pattern_column[k];
  for (int k = 0; k < nonzeros; k++) SM_INDEXVALS_S(J)[k] = w->pattern_row[k], v[k] = 0;
  for (int e = 0; e < w->links; e++) {
    int *s = w->slot + 4 * e;
    for (int k = 0; k < 4; k++)
      if (s[k] >= 0) v[s[k]] += k < 2 ? w->g[e] : -w->g[e];
  }
  return 0;
}

static int find_slot(const Network *w, int row, int column) {
  for (int k = w->pattern_column[column]; k < w->pattern_column[column + 1]; k++)
    if (w->pattern_row[k] == row) return k;
  return -1;
}

static void pattern(Network *w) {
  int z = w->zones, *degree = calloc(z, sizeof(int));
  int **near = calloc(z, sizeof(int *));
  for (int i = 0; i < z; i++) near[i] = malloc(sizeof(int)), near[i][0] = i, degree[i] = 1;
  for (int e = 0; e < w->links; e++) {
    int i = w->from[e], j = w->to[e];
    if (i < 0 || j < 0) continue;
    for (int turn = 0; turn < 2; turn++) {
      int a = turn ? j : i, b = turn ? i : j, known = 0;
      for (int k = 0; k < degree[a]; k++) known |= near[a][k] == b;
      if (!known) near[a] = realloc(near[a], (degree[a] + 1) * sizeof(int)), near[a][degree[a]++] = b;
    }
  }
  w->pattern_column = calloc(z + 1, sizeof(int));
  for (int i = 0; i < z; i++) w->pattern_column[i + 1] = w->pattern_column[i] + degree[i];
  w->pattern_row = malloc(w->pattern_column[z] * sizeof(int));
  for (int i = 0; i < z; i++)
    memcpy(w->pattern_row + w->pattern_column[i], near[i], degree[i] * sizeof(int)), free(near[i]);
  w->slot = malloc(4 * w->links * sizeof(int));
  for (int e = 0; e < w->links; e++) {
    int i = w->from[e], j = w->to[e], *s = w->slot + 4 * e;
    s[0] = i >= 0 ? find_slot(w, i, i) : -1;
    s[1] = j >= 0 ? find_slot(w, j, j) : -1;
    s[2] = i >= 0 && j >= 0 ? find_slot(w, i, j) : -1;
    s[3] = i >= 0 && j >= 0 ? find_slot(w, j, i) : -1;
  }
  free(near), free(degree);
}

static SUNContext context;

static void setup_kinsol(Network *w, int sparse) {
  int z = w->zones;
  if (!context) SUNContext_Create(NULL, &context);
  w->u = N_VNew_Serial(z, context);
  w->ones = N_VNew_Serial(z, context);
  N_VConst(1, w->ones);
  w->kin = KINCreate(context);
  KINSetUserData(w->kin, w);
  KINInit(w->kin, kin_residual, w->u);
  if (sparse) {
    pattern(w);
    w->J = SUNSparseMatrix(z, z, w->pattern_column[z], CSC_MAT, context);
    w->ls = SUNLinSol_KLU(w->u, w->J, context);
  } else {
    w->J = SUNDenseMatrix(z, z, context);
    w->ls = SUNLinSol_Dense(w->u, w->J, context);
  }
  KINSetLinearSolver(w->kin, w->ls, w->J);
  KINSetJacFn(w->kin, sparse ? kin_sparse : kin_dense);
  KINSetMaxSetupCalls(w->kin, 1);
  KINSetNumMaxIters(w->kin, 200);
  KINSetScaledStepTol(w->kin, 1e-15);
  KINSetFuncNormTol(w->kin, TOLERANCE * w->scale);
  /* The default, a thousand times the size of the start, is one pascal for a start at zero. */
  KINSetMaxNewtonStep(w->kin, 1e6);
  KINSetPrintLevel(w->kin, 0);
  KINSetErrFile(w->kin, NULL);
}

static void end_kinsol(Network *w) {
  KINFree(&w->kin), SUNLinSolFree(w->ls), SUNMatDestroy(w->J), N_VDestroy(w->u), N_VDestroy(w->ones);
  free(w->pattern_column), free(w->pattern_row), free(w->slot);
  w->pattern_column = w->pattern_row = w->slot = NULL;
}

static int solve_kinsol(Network *w) {
  N_VConst(0, w->u);
  int flag = KINSol(w->kin, w->u, KIN_LINESEARCH, w->ones, w->ones);
  memcpy(w->p, N_VGetArrayPointer(w->u), w->zones * sizeof(double));
  return flag >= 0 && flag != 2;
}

/* ---- GSL ---- */

static int gsl_residual(const gsl_vector *x, void *data, gsl_vector *f) {
  Network *w = data;
  sweep(w, x->data);
  memcpy(f->data, w->F, w->zones * sizeof(double));
  return GSL_SUCCESS;
}

static int gsl_slopes(const gsl_vector *x, void *data, gsl_matrix *J) {
  Network *w = data;
  sweep(w, x->data);
  gsl_matrix_set_zero(J);
  for (int e = 0; e < w->links; e++) {
    int i = w->from[e], j = w->to[e];
    if (i >= 0) *gsl_matrix_ptr(J, i, i) += w->g[e];
    if (j >= 0) *gsl_matrix_ptr(J, j, j) += w->g[e];
    if (i >= 0 && j >= 0) *gsl_matrix_ptr(J, i, j) -= w->g[e], *gsl_matrix_ptr(J, j, i) -= w->g[e];
  }
  return GSL_SUCCESS;
}

static int gsl_both(const gsl_vector *x, void *data, gsl_vector *f, gsl_matrix *J) {
  gsl_slopes(x, data, J);
  memcpy(f->data, ((Network *)data)->F, ((Network *)data)->zones * sizeof(double));
  return GSL_SUCCESS;
}

static int solve_gsl(Network *w) {
  gsl_multiroot_function_fdf f = {gsl_residual, gsl_slopes, gsl_both, w->zones, w};
  gsl_vector *x = gsl_vector_calloc(w->zones);
  gsl_multiroot_fdfsolver_set(w->gsl, &f, x);
  int solved = 0;
  for (int step = 0; step < 500 && !solved; step++) {
    if (gsl_multiroot_fdfsolver_iterate(w->gsl)) break;
    double worst = 0;
    for (int i = 0; i < w->zones; i++) worst = fmax(worst, fabs(w->gsl->f->data[i]));
    solved = worst <= TOLERANCE * w->scale;
  }
  memcpy(w->p, w->gsl->x->data, w->zones * sizeof(double));
  gsl_vector_free(x);
  return solved;
}

/* ---- */

static Network *read_network(FILE *file) {
  Network *w = calloc(1, sizeof(Network));
  if (fscanf(file, "%d %d", &w->zones, &w->links) != 2) exit(2);
  int z = w->zones, l = w->links;
  w->from = malloc(l * sizeof(int)), w->to = malloc(l * sizeof(int));
  double **by_link[] = {&w->c, &w->n, &w->at_width, &w->drive, &w->chord, &w->m, &w->g};
  for (int k = 0; k < 7; k++) *by_link[k] = calloc(l, sizeof(double));
  double **by_zone[] = {&w->p, &w->trial, &w->F, &w->T, &w->d};
  for (int k = 0; k < 5; k++) *by_zone[k] = calloc(z, sizeof(double));
  for (int e = 0; e < l; e++) {
    if (fscanf(file, "%d %d %lf %lf %lf", w->from + e, w->to + e, w->c + e, w->n + e, w->drive + e) != 5)
      exit(2);
    w->at_width[e] = pow(WIDTH, w->n[e]);
    w->chord[e] = w->c[e] * pow(4, w->n[e] - 1);
  }
  sweep(w, w->p);
  for (int i = 0; i < z; i++) w->scale = fmax(w->scale, w->T[i]);
  return w;
}

static double cpu_us(void) {
  struct timespec now;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
  return now.tv_sec * 1e6 + now.tv_nsec * 1e-3;
}

static int ascending(const void *a, const void *b) {
  double x = *(const double *)a, y = *(const double *)b;
  return (x > y) - (x < y);
}

int main(int count, char **argument) {
  if (count != 5) return 2;
  const char *method = argument[1];
  int kinsol = !strncmp(method, "kinsol", 6), klu = !strcmp(method, "kinsol-klu");
  int gsl = !strcmp(method, "gsl-hybrid"), repeats = atoi(argument[4]);
  FILE *file = fopen(argument[2], "r");
  int networks;
  if (!file || fscanf(file, "%d", &networks) != 1) return 2;
  Network **all = malloc(networks * sizeof(Network *));
  for (int k = 0; k < networks; k++) all[k] = read_network(file);
  gsl_set_error_handler_off();
  for (int k = 0; k < networks; k++) {
    Network *w = all[k];
    if (!kinsol && !gsl) w->A = calloc((size_t)w->zones * w->zones, sizeof(double));
    if (kinsol && !klu) setup_kinsol(w, 0);
    if (gsl) w->gsl = gsl_multiroot_fdfsolver_alloc(gsl_multiroot_fdfsolver_hybridsj, w->zones);
  }
  double *times = malloc(repeats * sizeof(double));
  int failed = 0;
  for (int r = 0; r < repeats; r++) {
    double start = cpu_us();
    failed = 0;
    for (int k = 0; k < networks; k++) {
      /* KLU's set-up and analysis are part of a solve: its memory cannot be reused for another start. */
      if (klu) setup_kinsol(all[k], 1);
      failed += !(kinsol ? solve_kinsol(all[k]) : gsl ? solve_gsl(all[k]) : solve_own(all[k]));
      if (klu) end_kinsol(all[k]);
    }
    times[r] = (cpu_us() - start) / networks;
  }
  qsort(times, repeats, sizeof(double), ascending);
  printf("%.6f %d\n", times[repeats / 2], failed);
  FILE *out = fopen(argument[3], "w");
  for (int k = 0; k < networks; k++) {
    for (int i = 0; i < all[k]->zones; i++) fprintf(out, "%.17g ", all[k]->p[i]);
    fprintf(out, "\n");
  }
  fclose(out);
  return 0;
}
