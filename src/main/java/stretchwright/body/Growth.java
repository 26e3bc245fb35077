package stretchwright.body;

/**
 * Mean log stature by age: age enters the children's joint normal through it, so that a straight line serves from two
 * years to twenty.
 *
 * @param ages years, rising
 * @param logs mean log of the stature in mm at those ages, not falling
 */
record Growth(double[] ages, double[] logs) {
    static final Growth NONE = new Growth(new double[0], new double[0]);

    boolean isEmpty() {
        return ages.length == 0;
    }

    double first() {
        return ages[0];
    }

    double last() {
        return ages[ages.length - 1];
    }

    double at(double age) {
        int i = 1;
        while (i < ages.length - 1 && age > ages[i]) {
            i++;
        }
        double t = Math.min(1, Math.max(0, (age - ages[i - 1]) / (ages[i] - ages[i - 1])));
        return logs[i - 1] + t * (logs[i] - logs[i - 1]);
    }
}
