package org.headhouse.linter.site;

/** What a head unit does while another client uses the line. */
public enum OtherClients implements Word {
  WAITS("waits");

  private final String word;

  OtherClients(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
