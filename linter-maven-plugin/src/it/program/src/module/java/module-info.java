/** The same program as a module. */
module example.program {
  requires org.headhouse.linter;
}
