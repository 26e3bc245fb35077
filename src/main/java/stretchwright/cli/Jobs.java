package stretchwright.cli;

import stretchwright.ground.Progress;
import stretchwright.intake.MakeFile;
import stretchwright.make.Made;
import stretchwright.make.Make;

/** What the make command asks of the make room; tests put other rooms behind it. */
public interface Jobs {
    MakeFile read(String fileName, byte[] bytes);

    Made run(MakeFile make, Progress progress);

    /** The real ones. */
    static Jobs real() {
        return new Jobs() {
            @Override
            public MakeFile read(String fileName, byte[] bytes) {
                return Make.read(fileName, bytes);
            }

            @Override
            public Made run(MakeFile make, Progress progress) {
                return Make.run(make, progress);
            }
        };
    }
}
