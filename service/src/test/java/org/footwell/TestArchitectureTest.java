package org.footwell;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** What holds for the code of the tests as well. */
@AnalyzeClasses(packages = "org.footwell", importOptions = ImportOption.OnlyIncludeTests.class)
class TestArchitectureTest {

  @ArchTest
  static final ArchRule longRowsOfArgumentsAreBuilt =
      ArchitectureTest.longRowsOfArgumentsAreBuilt();
}
